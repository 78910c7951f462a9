package courseworthy.units;

import java.util.Arrays;
import java.util.List;

/**
 * An intended-use category as it is marked on bikes and parts, with the highest ledge it is for: EN 17406:2020 by category, ASTM
 * F2043-13(2018) by condition, whose first keeps its tyres on the ground.
 */
public enum UseCategory {

    EN_1("EN 1", RuleValue.CATEGORY_2_LEDGE),
    EN_2("EN 2", RuleValue.CATEGORY_2_LEDGE),
    EN_3("EN 3", RuleValue.CATEGORY_3_LEDGE),
    EN_4("EN 4", RuleValue.CATEGORY_4_LEDGE),
    EN_5("EN 5", Double.POSITIVE_INFINITY),
    EN_6("EN 6", RuleValue.CATEGORY_2_LEDGE),
    ASTM_1("ASTM 1", 0),
    ASTM_2("ASTM 2", RuleValue.CATEGORY_2_LEDGE),
    ASTM_3("ASTM 3", RuleValue.CONDITION_3_LEDGE),
    ASTM_4("ASTM 4", RuleValue.CONDITION_4_LEDGE),
    ASTM_5("ASTM 5", Double.POSITIVE_INFINITY);

    private final String marked;
    private final RuleValue named;
    private final double drop;

    UseCategory(String marked, RuleValue named) {
        this.marked = marked;
        this.named = named;
        this.drop = Double.NaN;
    }

    UseCategory(String marked, double drop) {
        this.marked = marked;
        this.named = null;
        this.drop = drop;
    }

    /** How they are marked, in order. */
    public static List<String> words() {
        return Arrays.stream(values()).map(each -> each.marked).toList();
    }

    /** The highest ledge that a marked category is for, m; infinite where it states no bound. */
    public static double highestDrop(String marked) {
        UseCategory category = values()[words().indexOf(marked)];
        return category.named == null ? category.drop : category.named.inBase();
    }
}
