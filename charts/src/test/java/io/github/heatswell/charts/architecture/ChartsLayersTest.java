package io.github.heatswell.charts.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "io.github.heatswell", importOptions = DoNotIncludeTests.class)
class ChartsLayersTest {
    @ArchTest
    static final ArchRule onlyDrawingKnowsJFreeChart = noClasses()
            .that()
            .resideOutsideOfPackage("io.github.heatswell.charts.drawing..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.jfree..")
            .because("what a chart shows is decided without the drawing library, and can be tested without it")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule onlyTablesKnowCommonsCsv = noClasses()
            .that()
            .resideOutsideOfPackage("io.github.heatswell.charts.table..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.commons.csv..")
            .because("the columns and their number format are settled in one place")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule chartsKnowNoScenarios = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAPackage("io.github.heatswell.scenarios..")
            .because("a chart is drawn from a result, however its scenario was described")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule packagesFormNoCycles = slices().matching("io.github.heatswell.charts.(*)..")
            .should()
            .beFreeOfCycles()
            .because("packages in a cycle can only be read, tested and changed together")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule nothingIsPrinted = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS
            .because("a library tells its caller through results and exceptions; the console is the caller's")
            .allowEmptyShould(true);
}
