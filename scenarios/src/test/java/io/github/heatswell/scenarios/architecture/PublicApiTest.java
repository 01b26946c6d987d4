package io.github.heatswell.scenarios.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What other programs can call, in all three modules: short lists of parameters, and nothing public without a reason. */
class PublicApiTest {

    private static final String ROOT = "io.github.heatswell.";
    private static final int MAX_PARAMETERS = 5;

    /** Public although no other package names them, each with the reason. */
    private static final Set<String> ON_PURPOSE = Set.of(
            // Programs start here.
            "scenarios.Heatswell",
            "scenarios.readings.LogReader",
            "scenarios.readings.SpotReader",
            // A programmer writes one, as a lambda or by hand, and hands it in.
            "sizing.VesselFormula$NetExpansion",
            "study.Study$Model",
            "study.Study$SampleFailedException",
            "scenarios.report.ResultFile$Content",
            "scenarios.report.ResultFile$Text",
            // A public method of a type that is used elsewhere returns one.
            "charts.DailyFigures$Day",
            "diagnosis.Evidence$Part",
            "diagnosis.Hazard",
            "scenarios.readings.LogReader$LogFile",
            "study.VarianceShares",
            "system.Shell$CylinderBuilder");

    private static final JavaClasses ALL = OwnClasses.all();

    /**
     * Records are let off where they are data that the library makes and a caller only reads: then nobody outside the module
     * ever writes the long list, and reading is by name.
     */
    @Test
    void nothingTakesMoreThanFiveParameters() {
        List<String> tooLong = openTypes(ALL)
                .flatMap(PublicApiTest::openCodeUnits)
                .filter(unit -> unit.getRawParameterTypes().size() > MAX_PARAMETERS)
                .filter(unit -> !madeByItsOwnModule(unit))
                .map(unit -> shortName(unit.getFullName()))
                .sorted()
                .toList();

        assertEquals(List.of(), tooLong, "more than five parameters are confused with each other; use a builder");
    }

    @Test
    void everyPublicTypeIsNeededSomewhereElse() {
        Set<String> alone = new TreeSet<>();
        openTypes(ALL)
                .filter(type -> type.getDirectDependenciesToSelf().stream()
                        .allMatch(use -> use.getOriginClass().getPackageName().equals(type.getPackageName())))
                .forEach(type -> alone.add(shortName(type.getName())));

        assertEquals(
                new TreeSet<>(ON_PURPOSE),
                alone,
                "make a type package-private, or say in this test why it is public though no other package names it");
    }

    @Test
    void bothRulesSeeWhatBreaksThem() {
        JavaClasses samples = new ClassFileImporter().importClasses(Crowded.class, Data.class, Hidden.class);

        List<String> found = openTypes(samples)
                .flatMap(PublicApiTest::openCodeUnits)
                .filter(unit -> unit.getRawParameterTypes().size() > MAX_PARAMETERS)
                .filter(unit -> !madeByItsOwnModule(unit))
                .map(JavaCodeUnit::getName)
                .sorted()
                .toList();
        assertEquals(List.of("<init>", "handed"), found);
        assertTrue(openTypes(samples).noneMatch(type -> type.isEquivalentTo(Hidden.class)));
    }

    private static Stream<JavaClass> openTypes(JavaClasses classes) {
        return classes.stream().filter(PublicApiTest::isOpen);
    }

    private static boolean isOpen(JavaClass type) {
        return type.getModifiers().contains(JavaModifier.PUBLIC)
                && type.getEnclosingClass()
                        .map(outer -> outer.isEquivalentTo(PublicApiTest.class) || isOpen(outer))
                        .orElse(true);
    }

    private static Stream<JavaCodeUnit> openCodeUnits(JavaClass type) {
        return type.getCodeUnits().stream()
                .filter(unit -> unit.getModifiers().contains(JavaModifier.PUBLIC)
                        || unit.getModifiers().contains(JavaModifier.PROTECTED))
                .filter(unit -> !unit.getModifiers().contains(JavaModifier.SYNTHETIC));
    }

    private static boolean madeByItsOwnModule(JavaCodeUnit unit) {
        JavaClass owner = unit.getOwner();
        return owner.isRecord()
                && unit.isConstructor()
                && !unit.getAccessesToSelf().isEmpty()
                && unit.getAccessesToSelf().stream()
                        .map(JavaAccess::getOriginOwner)
                        .allMatch(user -> module(user).equals(module(owner)));
    }

    private static String module(JavaClass type) {
        String name = shortName(type.getPackageName());
        return name.startsWith("scenarios") ? "scenarios" : name.startsWith("charts") ? "charts" : "core";
    }

    private static String shortName(String name) {
        return name.replace(ROOT, "");
    }

    /** A record nobody makes: it would have to be made by a caller. */
    public record Data(int a, int b, int c, int d, int e, int f) {}

    /** A method and a constructor; only the one that others can call counts. */
    public static class Crowded {
        Crowded(int a, int b, int c, int d, int e, int f) {}

        protected void handed(int a, int b, int c, int d, int e, int f) {}
    }

    private static class Hidden {}
}
