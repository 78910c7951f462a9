package courseworthy.event;

import java.time.LocalTime;

/** Times of day as files write them: {@code 07:30}. */
final class ClockTime {

    private static final String FORM = "dd:dd";

    private ClockTime() {
    }

    /** A time of day; null where it is none. */
    static LocalTime of(String text) {
        int[] parts = numbers(text, FORM);
        return parts == null || parts[0] > 23 || parts[1] > 59 ? null : LocalTime.of(parts[0], parts[1]);
    }

    /** The numbers in a text of a form in which {@code d} stands for a digit; null where it has another form. */
    static int[] numbers(String text, String form) {
        if (text.length() != form.length()) {
            return null;
        }
        int[] out = new int[3];
        int part = 0;
        for (int i = 0; i < form.length(); i++) {
            char c = text.charAt(i);
            if (form.charAt(i) != 'd') {
                if (c != form.charAt(i)) {
                    return null;
                }
                part++;
            } else if (c < '0' || c > '9') {
                return null;
            } else {
                out[part] = out[part] * 10 + c - '0';
            }
        }
        return out;
    }
}
