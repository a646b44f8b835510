package org.coachskin.cli;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.coachskin.analysis.Field;
import org.coachskin.analysis.Held;
import org.junit.jupiter.api.Test;

/** Who may ask whom: the command prints what the library answers. */
class DirectionTest {

    private static final JavaClasses ALL =
            new ClassFileImporter()
                    .withImportOption(new ImportOption.DoNotIncludeTests())
                    .importPackages("org.coachskin");

    @Test
    void theLibraryKnowsNothingOfTheCommand() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.coachskin.cli..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.coachskin.cli..", "picocli..", "org.snakeyaml..", "com.fasterxml..")
                .check(ALL);
    }

    @Test
    void theFileReaderKnowsNothingOfTheSubcommands() {
        noClasses()
                .that()
                .resideInAPackage("org.coachskin.cli.file")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.coachskin.cli")
                .check(ALL);
    }

    @Test
    void theReportKnowsNeitherSubcommandsNorFiles() {
        noClasses()
                .that()
                .resideInAPackage("org.coachskin.cli.report..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.coachskin.cli", "org.coachskin.cli.file")
                .check(ALL);
    }

    @Test
    void subcommandsAskForVerdictsAndNotForMechanics() {
        noClasses()
                .that()
                .resideInAPackage("org.coachskin.cli")
                .should()
                .dependOnClassesThat(
                        // What fittings bear is part of a verdict, how it moves of its picture.
                        resideInAnyPackage(
                                        "org.coachskin.series..",
                                        "org.coachskin.harmonic..",
                                        "org.coachskin.local..",
                                        "org.coachskin.analysis..",
                                        "org.ejml..",
                                        "org.apache.commons.math3..")
                                .and(not(belongToAnyOf(Held.class, Field.class, Field.Node.class))))
                .check(ALL);
    }

    @Test
    void onlyMainWritesToStandardOutput() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName(Main.class.getName())
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .check(ALL);
    }
}
