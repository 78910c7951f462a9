package courseworthy.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Other values for a key, by the form of the one it has and by what its schema names; not all of them need be accepted. */
final class AcceptedValues {

    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,2}):([0-9]{2})( h)?");
    private static final Pattern AMOUNT = Pattern.compile("(.*?)(-?[0-9]+(?:\\.[0-9]+)?)( [^ ]+)");
    private static final List<Double> FACTORS = List.of(0.5, 0.8, 1.3, 2.0, 0.25, 4.0, 0.95, 1.1);
    private static final List<String> TRUTHS = List.of("yes", "no");

    private AcceptedValues() {
    }

    static List<JsonNode> besides(JsonNode value, List<JsonNode> shapes) {
        List<JsonNode> out = new ArrayList<>();
        if (value.isArray()) {
            lists((ArrayNode) value, shapes, out);
        } else if (!value.isObject()) {
            words(value, shapes, out);
            if (out.isEmpty()) {
                numbers(value, out);
            }
        }
        return out;
    }

    private static void lists(ArrayNode value, List<JsonNode> shapes, List<JsonNode> out) {
        for (int i = 0; i < value.size(); i++) {
            for (JsonNode other : besides(value.get(i), shapes)) {
                ArrayNode list = value.deepCopy();
                list.set(i, other);
                out.add(list);
            }
            if (value.size() > 1) {
                ArrayNode shorter = value.deepCopy();
                shorter.remove(i);
                out.add(shorter);
            }
        }
    }

    private static void words(JsonNode value, List<JsonNode> shapes, List<JsonNode> out) {
        for (JsonNode shape : shapes) {
            for (JsonNode word : shape.path("enum")) {
                boolean truth = word.asText().equals("true") || word.asText().equals("false");
                if (!truth && !word.asText().equals(truth(value))) {
                    out.add(word);
                }
            }
        }
    }

    private static String truth(JsonNode value) {
        return value.isBoolean() ? TRUTHS.get(value.asBoolean() ? 0 : 1) : value.asText();
    }

    private static void numbers(JsonNode value, List<JsonNode> out) {
        String text = value.asText();
        Matcher clock = CLOCK.matcher(text);
        Matcher amount = AMOUNT.matcher(text);
        if (value.isIntegralNumber()) {
            for (int step : new int[] {1, -1, 2, -2, 4, -4, 10, -10, value.asInt()}) {
                out.add(JsonNodeFactory.instance.numberNode(Math.max(0, value.asInt() + step)));
            }
        } else if (value.isNumber()) {
            FACTORS.forEach(factor -> out.add(JsonNodeFactory.instance.numberNode(value.asDouble() * factor)));
        } else if (clock.matches()) {
            int minutes = 60 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2));
            for (int step : new int[] {30, -30, 120, -120, 300, -300}) {
                int other = Math.floorMod(minutes + step, 24 * 60);
                out.add(text(String.format("%02d:%02d", other / 60, other % 60).substring(clock.group(3) != null && other < 600 ? 1 : 0)
                        + (clock.group(3) == null ? "" : " h")));
            }
        } else if (amount.matches()) {
            BigDecimal number = new BigDecimal(amount.group(2));
            for (double factor : FACTORS) {
                BigDecimal other = number.multiply(BigDecimal.valueOf(factor)).setScale(Math.max(1, number.scale()), RoundingMode.HALF_UP);
                out.add(text(amount.group(1) + other.stripTrailingZeros().toPlainString() + amount.group(3)));
            }
            if (number.signum() == 0) {
                out.add(text(amount.group(1) + "5" + amount.group(3)));
                out.add(text(amount.group(1) + "20" + amount.group(3)));
            }
        } else {
            out.add(text(text + " other"));
        }
    }

    private static JsonNode text(String text) {
        return JsonNodeFactory.instance.textNode(text);
    }
}
