package courseworthy;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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
        MAY_USE.put("course", "text");
        MAY_USE.put("rider", "text");
        MAY_USE.put("event", "text");
        MAY_USE.put("workshop", "text");
        MAY_USE.put("ride", "course rider event workshop");
        MAY_USE.put("topic", "");
        // Topics are data and know nobody: the kinds of bike are theirs, and derived measures read what is settled.
        MAY_USE.put("demand", "course rider event workshop ride topic");
        MAY_USE.put("claim", "topic");
        MAY_USE.put("rulebase", "text demand topic claim workshop");
        // A schema says what the readers of files take, those of debriefs included.
        MAY_USE.put("schema", "text course rider event workshop demand topic claim rulebase debrief");
        MAY_USE.put("decision", "topic claim");
        MAY_USE.put("call", "rulebase decision demand topic claim");
        // A call hands on demands, decisions and topics; the gears that exist are the rule base's.
        MAY_USE.put("worth", "call ride demand topic claim rulebase decision");
        // A build is held against the decisions of a call, and says what they rest on; what parts return is a range of the ride.
        MAY_USE.put("build", "call worth ride workshop rulebase demand topic claim decision");
        MAY_USE.put("checklist", "call build event demand topic claim decision");
        MAY_USE.put("brief", "text course rider event workshop ride demand topic claim rulebase decision call worth build "
                + "checklist");
        // A debrief is a file that people write, and holds what happened against topics and what rules said on them.
        MAY_USE.put("debrief", "text topic claim brief call");
        MAY_USE.put("report", "");
        MAY_USE.put("render", "report");
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

    /** The class that wires the stages lies in the root package, beside the one where the tool starts. */
    @Test
    void commandsUseOnlyTheRoot() {
        noClasses().that().resideInAPackage(in("cli"))
                .should().dependOnClassesThat(areOursBut("cli", "").and(
                        DescribedPredicate.not(resideInAPackage("courseworthy"))))
                .check(OURS);
    }

    @Test
    void nobodyUsesTheRootOrTheCommandsButThemselves() {
        noClasses().that().resideOutsideOfPackages("courseworthy", in("cli"))
                .should().dependOnClassesThat().resideInAnyPackage("courseworthy", in("cli")).check(OURS);
        noClasses().that().resideInAPackage("courseworthy").and().doNotHaveFullyQualifiedName(Main.class.getName())
                .should().dependOnClassesThat().resideInAPackage(in("cli")).allowEmptyShould(true).check(OURS);
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
        known.add("cli");
        assertThat(known).containsAll(found);
    }

    @Test
    void packagesFormNoCircle() {
        slices().matching("courseworthy.(*)..").should().beFreeOfCycles().check(OURS);
    }

    @Test
    void eachLibraryLivesInItsPackage() {
        onlyIn("rulebase", "org.drools..", "org.kie..", "org.mvel..");
        onlyIn("cli", "picocli..");
        onlyIn("course", "javax.xml..", "org.xml..", "org.w3c..");
        onlyIn("text", "org.yaml..", "org.snakeyaml..", "com.fasterxml.jackson.dataformat..");
        noClasses().should().dependOnClassesThat().resideInAnyPackage("org.slf4j..", "java.util.logging..")
                .because("the tool has nothing to log: it says what it has to say").check(OURS);
    }

    /** Reading is {@code text}'s alone; a result is written by one class. */
    @Test
    void jacksonLivesInTextAndInTheJsonWriter() {
        classes().that(dependOn("com.fasterxml.jackson.."))
                .should().resideInAPackage(in("text"))
                .orShould().haveNameMatching("courseworthy\\.brief\\.Json")
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
