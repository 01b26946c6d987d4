package io.github.heatswell.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.Serializable;

@AnalyzeClasses(packages = "io.github.heatswell", importOptions = DoNotIncludeTests.class)
class CoreLayersTest {
    @ArchTest
    static final ArchRule onlyTestsUseTheLibrarysIntegrators = noClasses()
            .that()
            .resideInAPackage("io.github.heatswell..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.hipparchus.ode..")
            .because("the simulation steps by itself, and whoever uses core should not have to carry that library")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule onlyTheDiagnosisOptimises = noClasses()
            .that()
            .resideOutsideOfPackage("io.github.heatswell.diagnosis..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.hipparchus.optim..")
            .because("fitting a house to readings is one question asked of the model; nothing else needs an optimiser")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule coreStandsOnJavaAndHipparchusAlone = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", "org.hipparchus..", "io.github.heatswell..")
            .because("whoever embeds the model should get no library beyond Hipparchus with it")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule coreKnowsNoChartsAndNoScenarios = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.github.heatswell.charts..", "io.github.heatswell.scenarios..")
            .because("the model is the bottom layer: drawing it and reading it from files build on it")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule runsKnowNoStudies = noClasses()
            .that()
            .resideInAnyPackage(
                    "io.github.heatswell.units..",
                    "io.github.heatswell.water..",
                    "io.github.heatswell.system..",
                    "io.github.heatswell.system..",
                    "io.github.heatswell.simulation..",
                    "io.github.heatswell.result..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "io.github.heatswell.study..", "io.github.heatswell.checksheet..", "io.github.heatswell.ageing..")
            .because("a run knows one house exactly; what is uncertain about it, and how it is checked, is asked from"
                    + " outside by running it again")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule studiesKnowNoChecks = noClasses()
            .that()
            .resideInAPackage("io.github.heatswell.study..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.github.heatswell.checksheet..", "io.github.heatswell.ageing..")
            .because("how uncertain numbers spread is the same whatever is read on a gauge")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule nothingThatComputesKnowsTheNarrative = noClasses()
            .that()
            .resideOutsideOfPackage("io.github.heatswell.narrative..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("io.github.heatswell.narrative..")
            .because("what was found is put into sentences once, above everything that finds it")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule wordsNeedNoScreenNoFileAndNoThread = noClasses()
            .that()
            .resideInAnyPackage("io.github.heatswell.assessment..", "io.github.heatswell.narrative..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.awt..",
                    "javax..",
                    "java.io..",
                    "java.nio..",
                    "java.net..",
                    "java.util.concurrent..",
                    "java.util.prefs..")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Thread.class)
            .because("findings and narrative are values: a page in a browser says the same as a screen or a picture");

    @ArchTest
    static final ArchRule packagesFormNoCycles = slices().matching("io.github.heatswell.(*)..")
            .should()
            .beFreeOfCycles()
            .because("packages in a cycle can only be read, tested and changed together")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule nothingIsPrinted = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS
            .because("a library tells its caller through results and exceptions; the console is the caller's")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule nothingIsLogged = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.util.logging..")
            .because("what matters about a run belongs in its result, where the caller cannot miss it")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule nothingIsSharedBetweenRuns = fields().that()
            .areStatic()
            .should()
            .beFinal()
            .because("runs go on side by side in threads, and a static variable would let one disturb another")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule nothingIsSerializable = classes()
            .that()
            .areNotEnums()
            .and()
            .areNotRecords()
            .and()
            .areNotAssignableTo(Throwable.class)
            .should()
            .notBeAssignableTo(Serializable.class)
            .because(
                    "Java serialization would make every private field a promise; exempt are enums and exceptions, which"
                            + " inherit it, and records, which are written by their public components: exceptions carry them")
            .allowEmptyShould(true);
}
