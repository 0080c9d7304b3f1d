package counterbench.structure;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What the structure of the code keeps to, rule by rule with its reason, below a root package. */
public final class HouseRules {
    private static final Set<String> BROKEN_NUMBERS =
            Set.of(
                    "double",
                    "float",
                    "[D",
                    "[F",
                    "java.lang.Double",
                    "java.lang.Float",
                    "[Ljava.lang.Double;",
                    "[Ljava.lang.Float;");

    private final String root;
    private final Storeys storeys;

    public HouseRules(String root) {
        this.root = root;
        this.storeys = new Storeys(root);
    }

    /** Every class has its room. */
    public ArchRule roomsForAll() {
        return noClasses()
                .should(be(storeys.homeless()))
                .because("a package that has no place in the order of storeys is held by no rule");
    }

    /** Arrows point down. */
    public ArchRule arrowsPointDown() {
        return classes()
                .should(knowOnlyWhatLiesBelow())
                .because(
                        "a rule that can be read without what is built on it can be tested without"
                                + " it; procedure, cores and claims do not know each other");
    }

    /** SQL. */
    public ArchRule sqlOnlyInStores() {
        return noClasses()
                .that()
                .resideOutsideOfPackages(below("db"), root + "..store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.sql..",
                        "javax.sql..",
                        "org.jooq..",
                        "org.h2..",
                        "org.postgresql..",
                        "org.flywaydb..",
                        below("db.generated"))
                .because("what is judged must not depend on where it is kept");
    }

    /** Workbooks. */
    public ArchRule workbooksOnlyInPoi() {
        return noClasses()
                .that()
                .resideOutsideOfPackage(below("sheets.poi"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.apache.poi..", "org.openxmlformats..", "org.apache.xmlbeans..")
                .because("one place owns the traps of the library for workbooks");
    }

    /** Pages for a printer. */
    public ArchRule pagesOnlyInPdf() {
        return noClasses()
                .that()
                .resideOutsideOfPackage(below("printing.pdf"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.apache.pdfbox..", "org.apache.fontbox..", "uk.org.okapibarcode..")
                .because("what is printed is a value, which tests can read without drawing it");
    }

    /** Spring. */
    public ArchRule springOnlyAtTheTop() {
        return noClasses()
                .that()
                .resideOutsideOfPackages(root, below("shell"))
                .and()
                .resideOutsideOfPackage(below("people.store"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.springframework..")
                .because(
                        "use cases are plain objects, put together in the wiring; only people.store"
                                + " takes the salted hash of PINs from Spring Security's library");
    }

    /** Terminals. */
    public ArchRule terminalsOnlyInTheShell() {
        return noClasses()
                .that()
                .resideOutsideOfPackages(root, below("shell"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.jline..")
                .because("the same act is typed, scripted and tested without a terminal");
    }

    /** Files. */
    public ArchRule noFilesInTheCore() {
        return noClasses()
                .that()
                .resideInAnyPackage(pure())
                .should()
                .dependOnClassesThat(areFilesOrNetworks())
                .because("facts come into the core as values, so that any test can make them up");
    }

    /** The clock. */
    public ArchRule noClockBelowTheShell() {
        return noClasses()
                .that()
                .resideOutsideOfPackages(root, below("shell"))
                .should(readTheClock())
                .because(
                        "time comes in as a value; the same facts give the same findings for ever");
    }

    /** Floating point. */
    public ArchRule exactNumbers() {
        return noClasses()
                .that()
                .resideOutsideOfPackages(
                        below("shell"),
                        below("sheets.poi"),
                        below("printing.pdf"),
                        below("db.generated"))
                .should(touchBrokenNumbers())
                .because(
                        "quantities and money are exact; only workbooks, whose cells are doubles,"
                                + " places on a page and the rate of a progress line are not");
    }

    /** Standard output. */
    public ArchRule printOnlyAtTheEntrance() {
        return noClasses()
                .that()
                .doNotHaveFullyQualifiedName(root + ".shell.Entrance")
                .should(printByThemselves())
                .because("what a command prints goes through its invocation, in the chosen format");
    }

    private String below(String name) {
        return root + "." + name + "..";
    }

    private String[] pure() {
        Stream<String> whole =
                Stream.of("judgement", "facts", "stock", "job", "procedure", "cores", "claims")
                        .map(this::below);
        Stream<String> base =
                Stream.of(
                                "campaign",
                                "journal",
                                "people",
                                "intake",
                                "review",
                                "month",
                                "care",
                                "labels",
                                "labels.gs1")
                        .map(name -> root + "." + name);
        return Stream.concat(whole, base).toArray(String[]::new);
    }

    private static DescribedPredicate<JavaClass> areFilesOrNetworks() {
        List<String> allowed = List.of("java.io.Serializable", "java.io.UncheckedIOException");
        return DescribedPredicate.describe(
                "are files or networks",
                c ->
                        !allowed.contains(c.getName())
                                && Stream.of("java.io", "java.nio.file", "java.net")
                                        .anyMatch(c.getPackageName()::startsWith));
    }

    private ArchCondition<JavaClass> knowOnlyWhatLiesBelow() {
        return new ArchCondition<>("know only their own room and those below") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                type.getDirectDependenciesFromSelf().stream()
                        .filter(d -> !storeys.mayKnow(type, d.getTargetClass()))
                        .forEach(
                                d ->
                                        events.add(
                                                SimpleConditionEvent.violated(
                                                        d, d.getDescription())));
            }
        };
    }

    private static ArchCondition<JavaClass> be(DescribedPredicate<JavaClass> predicate) {
        return ArchCondition.from(predicate);
    }

    private static ArchCondition<JavaClass> readTheClock() {
        return accessing(
                "read the clock",
                a ->
                        isOneOf(a, "java.time.", "now", "system", "systemUTC", "systemDefaultZone")
                                || isOneOf(a, "java.lang.System", "currentTimeMillis", "nanoTime")
                                || isOneOf(a, "java.util.Date", "<init>"));
    }

    private static ArchCondition<JavaClass> printByThemselves() {
        return accessing(
                "print by themselves",
                a ->
                        isOneOf(a, "java.lang.System", "out", "err")
                                || isOneOf(a, "java.io.FileDescriptor", "out", "err"));
    }

    private static boolean isOneOf(JavaAccess<?> access, String owner, String... names) {
        return access.getTargetOwner().getName().startsWith(owner)
                && List.of(names).contains(access.getName());
    }

    private static ArchCondition<JavaClass> accessing(
            String what, Predicate<JavaAccess<?>> matches) {
        return new ArchCondition<>(what) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                type.getAccessesFromSelf().stream()
                        .filter(matches)
                        .forEach(
                                a ->
                                        events.add(
                                                SimpleConditionEvent.satisfied(
                                                        a, a.getDescription())));
            }
        };
    }

    private static ArchCondition<JavaClass> touchBrokenNumbers() {
        return new ArchCondition<>("hold or compute floating point") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                Stream<String> fields =
                        type.getFields().stream()
                                .filter(f -> isBroken(f.getRawType()))
                                .map(JavaField::getDescription);
                Stream<String> units =
                        type.getCodeUnits().stream()
                                .filter(HouseRules::isBroken)
                                .map(JavaCodeUnit::getDescription);
                Stream<String> calls =
                        type.getCodeUnitCallsFromSelf().stream()
                                .filter(
                                        c ->
                                                isBroken(c.getTarget().getRawReturnType())
                                                        || c
                                                                .getTarget()
                                                                .getRawParameterTypes()
                                                                .stream()
                                                                .anyMatch(HouseRules::isBroken))
                                .map(JavaAccess::getDescription);
                Stream.of(fields, units, calls)
                        .flatMap(s -> s)
                        .forEach(text -> events.add(SimpleConditionEvent.satisfied(type, text)));
            }
        };
    }

    private static boolean isBroken(JavaCodeUnit unit) {
        return isBroken(unit.getRawReturnType())
                || unit.getRawParameterTypes().stream().anyMatch(HouseRules::isBroken);
    }

    private static boolean isBroken(JavaClass type) {
        return BROKEN_NUMBERS.contains(type.getName());
    }
}
