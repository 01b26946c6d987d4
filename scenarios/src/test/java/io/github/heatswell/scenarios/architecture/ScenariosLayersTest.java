package io.github.heatswell.scenarios.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "io.github.heatswell", importOptions = DoNotIncludeTests.class)
class ScenariosLayersTest {
    @ArchTest
    static final ArchRule nothingBelowKnowsScenarios = noClasses()
            .that()
            .resideOutsideOfPackage("io.github.heatswell.scenarios..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("io.github.heatswell.scenarios..")
            .because("files and the command line are the top layer: core and charts must work without them")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule coreKnowsNoCharts = noClasses()
            .that()
            .resideOutsideOfPackages("io.github.heatswell.charts..", "io.github.heatswell.scenarios..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("io.github.heatswell.charts..")
            .because("the model is the bottom layer and is drawn from above")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule packagesFormNoCycles = slices().matching("io.github.heatswell.scenarios.(*)..")
            .should()
            .beFreeOfCycles()
            .because("packages in a cycle can only be read, tested and changed together")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule onlyTheCommandKnowsTeaching = noClasses()
            .that()
            .resideOutsideOfPackage("io.github.heatswell.scenarios.teaching..")
            .and()
            .doNotHaveFullyQualifiedName("io.github.heatswell.scenarios.cli.LessonsCommand")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("io.github.heatswell.scenarios.teaching..")
            .because("the course can be taken away, and the tool works as before");
}
