package courseworthy.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/** What the process ends with. Help prints its list from here. */
public enum ExitCode {

    OK(0, "the command did what was asked"),
    FAULT(1, "a sheet did not come out as its cases say, or the tool itself failed; COURSEWORTHY_TRACE=1 shows where"),
    BAD_INPUT(2, "something in the command line or in a file cannot be used; nothing was written");

    private final int number;
    private final String meaning;

    ExitCode(int number, String meaning) {
        this.number = number;
        this.meaning = meaning;
    }

    /** The number the process ends with. */
    public int number() {
        return number;
    }

    public String meaning() {
        return meaning;
    }

    /** Number and meaning of each, in order, as help shows them. */
    static Map<String, String> list() {
        Map<String, String> out = new LinkedHashMap<>();
        for (ExitCode code : values()) {
            out.put(Integer.toString(code.number), code.meaning);
        }
        return out;
    }
}
