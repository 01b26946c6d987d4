package io.github.heatswell.scenarios.architecture;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Event;

@AnalyzeClasses(locations = OwnClasses.class)
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

    @ArchTest
    static final ArchRule onlyTheNarrativeMakesStatements = noClasses()
            .that()
            .resideOutsideOfPackages("io.github.heatswell.assessment..", "io.github.heatswell.narrative..")
            .and()
            .doNotHaveFullyQualifiedName("io.github.heatswell.scenarios.teaching.Lesson$Template")
            .and()
            .doNotHaveFullyQualifiedName("io.github.heatswell.scenarios.teaching.SketchGrid")
            .and()
            .doNotHaveFullyQualifiedName("io.github.heatswell.scenarios.teaching.Worksheet")
            .and()
            .doNotHaveFullyQualifiedName("io.github.heatswell.scenarios.file.DoubtsOf")
            .should()
            .callMethodWhere(
                    target(owner(type(Statement.class))).and(target(nameMatching("of|plain|joined|then|capitalised"))))
            .orShould()
            .callConstructorWhere(target(owner(type(Statement.class))))
            .because(
                    "what was found is put into sentences once, in findings and narrative; pictures and reports only say"
                            + " in which units. A template, and what a sketch begins with, is a text of the course; and the values of a file stand in no sentence"
                            + " of the file's");

    @ArchTest
    static final ArchRule onlyTheNarrativeSaysWhatAnEventMeans = noClasses()
            .that()
            .resideInAnyPackage("io.github.heatswell.charts..", "io.github.heatswell.scenarios..")
            .and()
            .doNotHaveFullyQualifiedName("io.github.heatswell.scenarios.report.SummaryJson")
            .should()
            .callMethod(Event.Kind.class, "meaning")
            .because(
                    "a hazard is told by its finding, everywhere; the summary gives the meaning as a field of its own");

    @ArchTest
    static final ArchRule headlinesAndVerdictsAreOfTheNarrative = noClasses()
            .that()
            .resideInAnyPackage("io.github.heatswell.charts..", "io.github.heatswell.scenarios..")
            .should()
            .haveSimpleNameEndingWith("Headline")
            .orShould()
            .haveSimpleNameEndingWith("Story")
            .orShould()
            .haveSimpleNameEndingWith("Narrative")
            .orShould()
            .haveSimpleNameEndingWith("Circumstances")
            .orShould()
            .haveSimpleNameEndingWith("Verdict")
            .orShould()
            .haveSimpleNameEndingWith("Remarks")
            .because("what was found is put into sentences once, in core");
}
