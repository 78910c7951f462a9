package courseworthy.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the process ends with. Help prints its list from here.
 *
 * <p>1 is an answer, that cases did not hold; so what ends without any answer has the numbers that {@code sysexits.h} (BSD, 1980) gives to a
 * program that is not there (EX_UNAVAILABLE), to a fault inside one (EX_SOFTWARE) and to output that fails (EX_IOERR).
 */
public enum ExitCode {

    OK(0, "the command did what was asked"),
    CASES_FAILED(1, "one or more cases of a sheet failed"),
    BAD_INPUT(2, "something in the command line or in a file cannot be used; nothing was written"),
    /** The launcher's own, {@code ./courseworthy}: no Java or Maven, or a build that fails. */
    NOT_STARTED(69, "the tool could not be started: something it needs is missing, or it could not be built"),
    FAULT(70, "the tool itself failed; COURSEWORTHY_TRACE=1 shows where"),
    /** Not for a closed pipe: who reads only the beginning has lost nothing. */
    NOT_WRITTEN(74, "the result could not be written: the disk is full, or standard output is closed");

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
