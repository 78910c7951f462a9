package courseworthy.render.svg;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Figures in one attribute, parted by spaces, for the page's script; what is not known is a hyphen. */
final class FigureList {

    /** Of a figure in the page's data: as many as the JSON of a brief has at most. */
    static final int DECIMALS = 4;
    private static final String UNKNOWN = "-";

    private FigureList() {
    }

    static <T> String of(List<T> all, ToDoubleFunction<T> figure) {
        return of(all, figure::applyAsDouble, DECIMALS);
    }

    /** @param figure null where it is not known */
    static <T> String of(List<T> all, Function<T, Double> figure, int decimals) {
        StringBuilder out = new StringBuilder();
        for (T each : all) {
            Double value = figure.apply(each);
            out.append(out.isEmpty() ? "" : " ").append(value == null || value.isNaN() ? UNKNOWN : SvgWriter.fixed(value, decimals));
        }
        return out.toString();
    }
}
