package courseworthy;

import courseworthy.call.Call;
import courseworthy.call.Calling;
import courseworthy.claim.Author;
import courseworthy.claim.Claim;
import courseworthy.decision.Decision;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.rulebase.DroolsRules;
import courseworthy.rulebase.House;
import courseworthy.rulebase.PlainRules;
import courseworthy.rulebase.Row;
import courseworthy.rulebase.Rules;
import courseworthy.rulebase.Said;
import courseworthy.rulebase.SituationWriter;
import courseworthy.rulebase.Stage;
import courseworthy.rulebase.Untold;
import courseworthy.rulebase.check.Remark;
import courseworthy.rulebase.check.Remark.Kind;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes an example of each remark on a sheet as a situation that can be opened. Each is tried first: what does not show is not written. */
final class SheetExamples {

    private final DroolsRules rules;
    private final String sheet;

    private SheetExamples(List<Row> inForce, String sheet) {
        this.rules = new DroolsRules(inForce, House.load());
        this.sheet = sheet;
    }

    /**
     * @param typed the folder as typed; made where there is none, and nothing in it is written over
     * @return for each remark the file that shows it, as typed; empty where it has no example
     * @throws BadInput where something is in the way; nothing is then written
     */
    static List<String> write(List<Remark> remarks, List<Row> inForce, Path folder, String typed, String sheet) {
        if (folder == null) {
            throw refused(typed, "a path that cannot be", "the path of a folder");
        }
        SheetExamples examples = new SheetExamples(inForce, sheet);
        String in = typed.endsWith("/") ? typed : typed + "/";
        List<String> out = new ArrayList<>();
        Map<String, String> files = new LinkedHashMap<>();
        for (Remark remark : remarks) {
            boolean shows = remark.shown() != null && !remark.on().isEmpty() && examples.shows(remark);
            String name = shows ? name(remark, out.size() + 1) : "";
            out.add(shows ? in + name : "");
            if (shows) {
                files.put(name, examples.text(remark, in + name));
            }
        }
        write(files, folder, typed);
        return out;
    }

    /** Those of some remarks that are about rows, and those about topics on which the call shows that nobody speaks. */
    static List<Remark> confirmed(List<Remark> remarks, List<Row> inForce) {
        SheetExamples examples = new SheetExamples(inForce, "");
        List<Remark> out = new ArrayList<>();
        for (Remark remark : remarks) {
            if (remark.kind() != Kind.GAP || remark.shown() != null && examples.shows(remark)) {
                out.add(remark);
            }
        }
        return out;
    }

    /** Whether what is remarked can be seen once the call is made: all rows speak on the topic, or none does. */
    private boolean shows(Remark remark) {
        List<Row> given = new SituationFile("", "", remark.shown()).given();
        Call call = Calling.call(together(given), remark.shown().demands());
        Decision decision = call.on(Topics.of(remark.on()));
        Set<String> spoke = new HashSet<>();
        for (Claim claim : decision.taken()) {
            spoke.add(claim.author().rule());
        }
        decision.lost().forEach(lost -> spoke.add(lost.claim().author().rule()));
        if (remark.kind() == Kind.GAP) {
            return spoke.isEmpty() && decision.status() == Decision.Status.SETTLED;
        }
        boolean alone = remark.kind() == Kind.JOINABLE;
        for (Author author : alone ? remark.rows().subList(0, 1) : remark.rows()) {
            if (!spoke.contains(author.rule())) {
                return false;
            }
        }
        return true;
    }

    /** The rules, and before all others what the situation gives. */
    private Rules together(List<Row> given) {
        PlainRules before = new PlainRules(given);
        return () -> new Rules.Firing() {

            private final Rules.Firing first = before.open();
            private final Rules.Firing then = rules.open();

            @Override
            public Said fire(Stage stage) {
                List<Claim> claims = new ArrayList<>(first.fire(stage).claims());
                Said said = then.fire(stage);
                claims.addAll(said.claims());
                return new Said(claims, said.tasks());
            }

            @Override
            public List<Untold> couldNotTell() {
                return then.couldNotTell();
            }

            @Override
            public void close() {
                first.close();
                then.close();
            }
        };
    }

    /** {@code 03-contradicts-light.yaml}. */
    private static String name(Remark remark, int number) {
        String about = remark.rows().isEmpty() ? remark.topic() : remark.rows().get(0).rule();
        String plain = about.substring(about.indexOf('/') + 1).replace(' ', '-');
        return (number < 10 ? "00" : number < 100 ? "0" : "") + number + "-" + remark.kind().words().replace(' ', '-') + "-" + plain + ".yaml";
    }

    private String text(Remark remark, String file) {
        List<String> about = new ArrayList<>();
        for (Author author : remark.rows()) {
            about.add(author.rule());
        }
        String title = (about.isEmpty() ? remark.topic() : String.join(" and ", about)) + ": " + remark.kind().words();
        return "# " + opened(remark, file, sheet) + "\n" + SituationFile.KEY + ": '" + title.replace("'", "''") + "'\n"
                + SituationWriter.of(remark.shown());
    }

    /** The command that opens an example. */
    private static String opened(Remark remark, String file, String sheet) {
        return "courseworthy why " + quoted(file) + " " + quoted(remark.on()) + " --sheet " + quoted(sheet);
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
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path beside = folder.resolve("." + file.getKey() + ".part");
                Files.write(beside, file.getValue().getBytes(StandardCharsets.UTF_8));
                Files.move(beside, folder.resolve(file.getKey()));
            }
        } catch (IOException failed) {
            throw new BadInput(Fault.of(typed, 0, "", "that it cannot be written", "a folder that can be written to", ""));
        }
    }

    private static BadInput refused(String typed, String found, String expected) {
        return new BadInput(Fault.of(typed, 0, "", found, expected, "Nothing was written."));
    }
}
