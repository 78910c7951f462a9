package courseworthy;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import courseworthy.topic.BothEnds;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Who may know whom. Data goes down the table of packages and never up. */
class ArchitectureTest {

    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("courseworthy");

    /** Each package and those it may use; every package but the first two may use those two besides. */
    private static final Map<String, String> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("units", "");
        MAY_USE.put("problem", "");
        MAY_USE.put("text", "");
        MAY_USE.put("topic", "");
        MAY_USE.put("course", "text");
        MAY_USE.put("rider", "text");
        MAY_USE.put("event", "text topic");
        MAY_USE.put("workshop", "text");
        MAY_USE.put("ride", "course rider event workshop");
        MAY_USE.put("wear", "text workshop ride");
        MAY_USE.put("demand", "course rider event workshop ride topic");
        MAY_USE.put("claim", "topic");
        MAY_USE.put("sheet", "text demand topic claim");
        MAY_USE.put("engine", "text sheet demand topic claim");
        MAY_USE.put("decision", "topic claim");
        MAY_USE.put("call", "text engine sheet decision demand topic claim");
        MAY_USE.put("analysis", "sheet engine call decision demand topic claim");
        MAY_USE.put("fit", "engine sheet workshop topic claim");
        MAY_USE.put("worth", "course call ride engine sheet demand decision topic claim");
        MAY_USE.put("build", "call worth ride event workshop wear fit engine sheet demand decision topic claim");
        MAY_USE.put("stage", "call worth build wear ride event workshop engine sheet demand decision topic claim");
        MAY_USE.put("checklist", "call worth ride build wear event demand decision topic claim");
        MAY_USE.put("scout", "call ride engine demand decision course topic claim event rider sheet");
        MAY_USE.put("debrief", "call sheet claim topic text");
        MAY_USE.put("schema", "text course rider event workshop demand topic claim sheet debrief");
        MAY_USE.put("task", "text course rider event workshop ride wear topic demand claim sheet engine decision call analysis fit worth build "
                + "stage checklist debrief scout schema");
        MAY_USE.put("report", MAY_USE.get("task") + " task");
        MAY_USE.put("render", "report text");
        MAY_USE.put("cli", "task report render");
    }

    static Stream<String> packages() {
        return MAY_USE.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("packages")
    void aPackageUsesOnlyWhatTheTableAllows(String name) {
        noClasses().that().resideInAPackage(in(name))
                .should().dependOnClassesThat(areOursBut(name, MAY_USE.get(name)))
                .allowEmptyShould(true).check(OURS);
    }

    @Test
    void onlyTheStartOfTheToolLiesInTheRoot() {
        classes().that().resideInAPackage("courseworthy").should().haveFullyQualifiedName(Main.class.getName()).check(OURS);
        noClasses().should().dependOnClassesThat().resideInAPackage("courseworthy").check(OURS);
    }

    /** A property that draws by the clock fails on a day when nothing changed; other draws are tried by giving it another seed. */
    @Test
    void everyPropertyHasItsSeed() {
        methods().that().areAnnotatedWith(Property.class).should(new ArchCondition<JavaMethod>("name their seed") {
            @Override
            public void check(JavaMethod method, ConditionEvents events) {
                if (method.getAnnotationOfType(Property.class).seed().isEmpty()) {
                    events.add(SimpleConditionEvent.violated(method, method.getFullName() + " has no seed"));
                }
            }
        }).check(ArchConfiguration.withThreadLocalScope(reading -> {
            reading.setResolveMissingDependenciesFromClassPath(false);
            return new ClassFileImporter().withImportOption(new ImportOption.OnlyIncludeTests()).importPackages("courseworthy");
        }));
    }

    /** What is written for machines takes words from the reports, never the other way round. */
    @Test
    void reportsInWordsKnowNothingOfJson() {
        noClasses().that().resideInAPackage("courseworthy.report").should().dependOnClassesThat().resideInAPackage(in("report.json")).check(OURS);
    }

    @Test
    void everyPackageIsInTheTable() {
        Set<String> found = new TreeSet<>();
        for (JavaClass each : OURS) {
            String name = each.getPackageName();
            if (!name.equals("courseworthy")) {
                found.add(name.substring("courseworthy.".length()).split("\\.")[0]);
            }
        }
        Set<String> known = new TreeSet<>(MAY_USE.keySet());
        assertThat(known).containsAll(found);
    }

    @Test
    void packagesFormNoCircle() {
        slices().matching("courseworthy.(*)..").should().beFreeOfCycles().check(OURS);
    }

    @Test
    void eachLibraryLivesInItsPackage() {
        noClasses().that().resideOutsideOfPackages(in("engine"), in("fit"))
                .should().dependOnClassesThat().resideInAnyPackage("org.drools..", "org.kie..", "org.mvel..").check(OURS);
        onlyIn("cli", "picocli..");
        onlyIn("course", "javax.xml..", "org.xml..", "org.w3c..");
        onlyIn("course.terrain", "mil.nga..");
        onlyIn("render.pdf", "org.apache.pdfbox..", "org.apache.fontbox..");
        onlyIn("text", "org.yaml..", "org.snakeyaml..", "com.fasterxml.jackson.dataformat..", "org.apache.commons.csv..");
        noClasses().should().dependOnClassesThat().resideInAnyPackage("org.slf4j..", "java.util.logging..")
                .because("the tool has nothing to log: it says what it has to say").check(OURS);
    }

    /** Reading is {@code text}'s alone; a result is written by one class. */
    @Test
    void jacksonLivesInTextAndInTheJsonWriter() {
        classes().that(dependOn("com.fasterxml.jackson.."))
                .should().resideInAPackage(in("text"))
                .orShould().haveNameMatching("courseworthy\\.report\\.json\\.Json")
                .allowEmptyShould(true).check(OURS);
    }

    /** The same input gives the same bytes: no clock, chance, zone or locale of the machine. */
    @Test
    void nothingDependsOnTheMachineOrTheMoment() {
        classes().should(neverAskFor("the clock, chance, zone or locale of the machine", access ->
                isOneOf(access, System.class, "currentTimeMillis", "nanoTime", "identityHashCode")
                        || isOneOf(access, Math.class, "random")
                        || isOneOf(access, Locale.class, "getDefault")
                        || isOneOf(access, TimeZone.class, "getDefault")
                        || isOneOf(access, ThreadLocalRandom.class, "current")
                        || isOneOf(access, java.util.UUID.class, "randomUUID")
                        || isOneOf(access, java.time.ZoneId.class, "systemDefault")
                        || access.getTargetOwner().isAssignableTo(Clock.class)
                        || access.getTargetOwner().getPackageName().equals("java.time") && access.getName().equals("now")))
                .check(OURS);
    }

    /** A check of the ordinary run fails for what the tool does, never for how fast the machine is: what needs a clock is run by hand. */
    @Test
    void noTestHoldsWorkToAClockOrToMemory() throws IOException {
        Pattern clock = Pattern.compile("nanoTime|currentTimeMillis|Thread\\.sleep|assertTimeout|@Timeout|setSoTimeout|MXBean|\\.now\\(\\)|"
                + "(total|free|max)Memory\\(|Clock\\.system");
        try (Stream<Path> all = Files.walk(Path.of("src", "test", "java"))) {
            List<Path> tests = all.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.toString().matches(".*(Measure|Benchmark|ArchitectureTest)\\.java")).toList();
            assertThat(tests).hasSizeGreaterThan(100).allSatisfy(file ->
                    assertThat(Files.readString(file).lines().filter(line -> clock.matcher(line).find() && !line.contains("carried.now()"))).isEmpty());
        }
    }

    @Test
    void nothingIsFormattedInTheMachinesLocale() {
        classes().should(neverAskFor("a format or a case change in the machine's locale", access ->
                isOneOf(access, String.class, "formatted")
                        || isOneOf(access, String.class, "format") && !takes(access, Locale.class)
                        || isOneOf(access, String.class, "toLowerCase", "toUpperCase") && !takes(access, Locale.class)
                        || isOneOf(access, java.io.PrintStream.class, "printf", "format") && !takes(access, Locale.class)
                        || isOneOf(access, java.io.PrintWriter.class, "printf", "format") && !takes(access, Locale.class)
                        || isOneOf(access, java.time.format.DateTimeFormatter.class, "ofPattern")
                                && !takes(access, Locale.class)))
                .check(OURS);
    }

    /** Files that people write are data: nothing read from them can run a program, a script, or reach the network. */
    @Test
    void nothingReachesTheNetworkOrStartsAProgram() {
        noClasses().should().dependOnClassesThat(resideInAnyPackage("java.net..", "javax.script..", "javax.net..")
                .or(DescribedPredicate.describe("are ProcessBuilder", each -> each.isEquivalentTo(ProcessBuilder.class))))
                .check(OURS);
        noClasses().should().callMethodWhere(DescribedPredicate.describe("Runtime.exec",
                call -> isOneOf(call, Runtime.class, "exec"))).check(OURS);
    }

    /** Methods of the writers of JSON, schemas, sections and measures whose first argument names a field, a key of a file or a part there. */
    private static final Set<String> NAME_OTHER_THINGS = Set.of("report.json.string", "report.json.object", "report.json.decisions", "report.builder", "schema.key",
            "demand.rider", "demand.bike");
    /** Words that mean something else than the topic of that name, each with where it is used. */
    private static final Map<String, List<String>> OTHER_THINGS = Map.of(
            "keys of the files of riders and seasons", List.of("InputKeys bike", "SeasonTask bike"),
            "answers in a debrief", List.of("OutcomeTable food", "OutcomeTable plugs", "OutcomeTable tubes", "OutcomeTable water"),
            "parts that a checklist goes through", List.of("ItemOrder clothing", "ItemOrder seatpost"),
            "what a stop offers", List.of("JsonRoadBook food", "JsonRoadBook water", "LongSectionFigure food", "LongSectionFigure water", "PlanReport food", "PlanReport water", "TopTubeCard food", "TopTubeCard water"),
            "things to get and to ride, and a column", List.of("ImpactTask bike", "JsonPlan bike", "RideLogSchema bike", "SeasonCsv bike", "SeasonWeeksCsv bike"));

    /** Code names a topic by its constant: a name that is mistyped as text would be found only when it runs, or never. */
    @Test
    void noTopicIsNamedByALiteral() throws IOException {
        Set<String> reach = new TreeSet<>();
        OURS.stream().filter(each -> each.getDirectDependenciesFromSelf().stream().anyMatch(to -> to.getTargetClass().isAssignableTo(Topic.class)
                || to.getTargetClass().isAssignableTo(Topics.class) || to.getTargetClass().isAssignableTo(BothEnds.class)))
                .forEach(each -> reach.add(each.getPackageName().replaceFirst("courseworthy\\.?", "")));
        assertThat(reach).contains("worth", "report").doesNotContain("course", "rider", "event", "workshop");
        reach.remove("topic");
        Set<String> named = new TreeSet<>();
        List<String> ends = Topics.all().stream().filter(topic -> topic.otherEnd() != null).map(Topic::plain).filter(plain -> plain.contains(" ")).toList();
        for (SourceLiterals.Literal each : SourceLiterals.ofMain()) {
            boolean other = NAME_OTHER_THINGS.contains(each.pack() + "." + each.callee());
            if (reach.contains(each.pack()) && !other && (Topics.find(each.text()) != null || each.joined() && ends.contains(each.text().strip()))) {
                named.add(each.type() + " " + each.text());
            }
        }
        assertThat(named).containsExactlyInAnyOrderElementsOf(OTHER_THINGS.values().stream().flatMap(List::stream).toList());
    }

    /** Rules written in DRL name topics as text, as sheets do: each name is that of a topic. */
    @Test
    void rulesThatJoinTopicsOrPartsNameTopicsThatExist() throws IOException {
        Pattern topics = Pattern.compile("SettledTopicFact\\(topic == \"([^\"]*)\"|@topics?\\(\"([^\"]*)\"\\)|collector\\.\\w+\\(\"[^\"]*\", \"([^\"]*)\"");
        List<String> found = new ArrayList<>();
        for (String folder : List.of("pairing", "fit")) {
            try (Stream<Path> files = Files.list(Path.of("rules", folder))) {
                for (Path file : files.filter(each -> each.toString().endsWith(".drl")).toList()) {
                    topics.matcher(Files.readString(file)).results().forEach(each -> found.addAll(Stream.of(each.group(1), each.group(2), each.group(3))
                            .filter(Objects::nonNull).flatMap(names -> Stream.of(names.split(", "))).toList()));
                }
            }
        }
        assertThat(found).hasSizeGreaterThan(40).allSatisfy(name -> assertThat(Topics.find(name)).as(name).isNotNull());
    }

    private static void onlyIn(String ours, String... library) {
        noClasses().that().resideOutsideOfPackage(in(ours))
                .should().dependOnClassesThat().resideInAnyPackage(library).check(OURS);
    }

    private static String in(String name) {
        return "courseworthy." + name + "..";
    }

    private static DescribedPredicate<JavaClass> areOursBut(String own, String allowed) {
        String[] fine = Stream.concat(Stream.of(own, "units", "problem"), Stream.of(allowed.split(" ")))
                .filter(name -> !name.isEmpty()).map(ArchitectureTest::in).toArray(String[]::new);
        return resideInAPackage("courseworthy..").and(DescribedPredicate.not(resideInAnyPackage(fine)))
                .as("are ours but not in %s", String.join(", ", fine));
    }

    private static DescribedPredicate<JavaClass> dependOn(String library) {
        return DescribedPredicate.describe("depend on " + library, each -> each.getDirectDependenciesFromSelf().stream()
                .anyMatch(to -> resideInAPackage(library).test(to.getTargetClass())));
    }

    private static ArchCondition<JavaClass> neverAskFor(String what, java.util.function.Predicate<JavaAccess<?>> asks) {
        return new ArchCondition<>("never ask for " + what) {
            @Override
            public void check(JavaClass each, ConditionEvents events) {
                each.getAccessesFromSelf().stream().filter(asks).forEach(access ->
                        events.add(SimpleConditionEvent.violated(access, access.getDescription())));
            }
        };
    }

    private static boolean isOneOf(JavaAccess<?> access, Class<?> owner, String... names) {
        return access.getTargetOwner().isEquivalentTo(owner) && Set.of(names).contains(access.getName());
    }

    private static boolean takes(JavaAccess<?> access, Class<?> type) {
        return access.getTarget().resolveMember().filter(JavaCodeUnit.class::isInstance).map(JavaCodeUnit.class::cast)
                .filter(unit -> unit.getRawParameterTypes().stream().anyMatch(each -> each.isEquivalentTo(type)))
                .isPresent();
    }
}
