package courseworthy.task;

import courseworthy.analysis.Finding;
import courseworthy.claim.RuleOrigin;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.OutputFailure;
import courseworthy.sheet.SituationWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes an example of each remark on a sheet as a situation that can be opened. {@link FindingVerifier} tried each before it was made. */
final class SheetExampleWriter {

    private SheetExampleWriter() {
    }

    /**
     * @param typed the folder as typed; made where there is none, and nothing in it is written over
     * @return for each remark the file that shows it, as typed; empty where it has no example
     * @throws BadInput   where something is in the way; nothing is then written
     * @throws OutputFailure where writing fails; nothing of it is then left
     */
    static List<String> write(List<Finding> remarks, Path folder, String typed, List<String> sheets) {
        if (folder == null) {
            throw refused(typed, "a path that cannot be", "the path of a folder");
        }
        String in = typed.endsWith("/") ? typed : typed + "/";
        List<String> out = new ArrayList<>();
        Map<String, String> files = new LinkedHashMap<>();
        for (Finding remark : remarks) {
            String name = remark.witness().situation() == null ? "" : name(remark, out.size() + 1);
            out.add(name.isEmpty() ? "" : in + name);
            if (!name.isEmpty()) {
                files.put(name, text(remark, in + name, sheets));
            }
        }
        write(files, folder, typed);
        return out;
    }

    /** {@code 03-contradicts-light.yaml}. */
    private static String name(Finding remark, int number) {
        String about = remark.rows().isEmpty() ? remark.topic() : remark.rows().get(0).rule();
        String plain = about.substring(about.indexOf('/') + 1).replace(' ', '-');
        return (number < 10 ? "00" : number < 100 ? "0" : "") + number + "-" + remark.kind().words().replace(' ', '-') + "-" + plain + ".yaml";
    }

    private static String text(Finding remark, String file, List<String> sheets) {
        List<String> about = new ArrayList<>();
        for (RuleOrigin author : remark.rows()) {
            about.add(author.rule());
        }
        String title = (about.isEmpty() ? remark.topic() : String.join(" and ", about)) + ": " + remark.kind().words();
        return "# " + opened(remark, file, sheets) + "\n" + SituationFile.KEY + ": '" + title.replace("'", "''") + "'\n"
                + SituationWriter.of(remark.witness().situation());
    }

    /** The command that opens an example. */
    private static String opened(Finding remark, String file, List<String> sheets) {
        RuleOrigin about = remark.witness().silent() == null && remark.on().isEmpty() ? remark.rows().get(0) : remark.witness().silent();
        String rule = about == null ? "" : " --rule " + quoted(about.rule());
        String on = remark.on().isEmpty() ? WhyResult.CHECKLIST : remark.on();
        return "courseworthy why " + quoted(file) + " " + quoted(on) + sheets.stream().map(sheet -> " --sheet " + quoted(sheet)).collect(Collectors.joining()) + rule;
    }

    private static String quoted(String word) {
        return word.matches("[A-Za-z0-9_./-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
    }

    private static void write(Map<String, String> files, Path folder, String typed) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw refused(typed, "a file", "a folder, or nothing");
        }
        for (String name : files.keySet()) {
            if (Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                throw refused(typed, "\"" + name + "\" in it", "a folder without examples");
            }
        }
        List<Path> written = new ArrayList<>();
        boolean all = false;
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path place = folder.resolve(file.getKey());
                Files.write(place, file.getValue().getBytes(StandardCharsets.UTF_8), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                written.add(place);
            }
            all = true;
        } catch (AccessDeniedException denied) {
            throw refused(typed, "no permission to write there", "a folder you may write to");
        } catch (IOException failed) {
            throw new OutputFailure(typed, failed);
        } finally {
            if (!all) {
                written.forEach(SheetExampleWriter::discard);
            }
        }
    }

    private static void discard(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException left) {
            // What is told is why it could not be written.
        }
    }

    private static BadInput refused(String typed, String found, String expected) {
        return new BadInput(Fault.of(typed, 0, "", found, expected, "Nothing was written."));
    }
}
