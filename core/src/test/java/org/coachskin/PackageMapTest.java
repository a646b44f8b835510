package org.coachskin;

import static com.tngtech.archunit.core.importer.ImportOption.Predefined.DO_NOT_INCLUDE_TESTS;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The package map of DEVELOPERS.md, as a test. */
class PackageMapTest {

    private static final JavaClasses CORE =
            new ClassFileImporter()
                    .withImportOption(DO_NOT_INCLUDE_TESTS)
                    .importPackages("org.coachskin");

    /** Package, and what it may import beside the root, in reading order. */
    private static final Map<String, List<String>> MAP = map();

    private static Map<String, List<String>> map() {
        Map<String, List<String>> map = new LinkedHashMap<>();
        map.put("units", List.of());
        map.put("sparse", List.of());
        map.put("mesh", List.of());
        map.put("material", List.of("units"));
        map.put("laminate", List.of("material"));
        map.put("harmonic", List.of("material", "laminate"));
        map.put("local", List.of("material", "laminate", "harmonic"));
        map.put("failure", List.of("material", "laminate"));
        map.put("panel", List.of("material", "laminate"));
        map.put("analysis", List.of("laminate", "panel"));
        map.put("series", List.of("laminate", "harmonic", "panel", "analysis"));
        map.put("shell", List.of("laminate", "panel", "analysis", "mesh", "sparse"));
        map.put(
                "check",
                List.of(
                        "material",
                        "laminate",
                        "local",
                        "failure",
                        "panel",
                        "analysis",
                        "series",
                        "shell"));
        map.put("design", List.of("material", "laminate", "failure", "panel", "analysis", "check"));
        map.put("bench", List.of("material", "laminate", "panel", "analysis", "check"));
        map.put(
                "reinforce",
                List.of("material", "laminate", "failure", "panel", "check", "design", "bench"));
        map.put(
                "prove",
                List.of("material", "laminate", "local", "failure", "panel", "analysis", "check"));
        return map;
    }

    @Test
    void packagesFormNoCycle() {
        slices().matching("org.coachskin.(*)..").should().beFreeOfCycles().check(CORE);
    }

    @TestFactory
    List<DynamicTest> everyPackageImportsOnlyWhatTheMapAllows() {
        List<DynamicTest> tests = new ArrayList<>();
        MAP.forEach(
                (name, allowed) ->
                        tests.add(
                                DynamicTest.dynamicTest(
                                        name,
                                        () -> {
                                            List<String> open =
                                                    new ArrayList<>(
                                                            List.of(
                                                                    "org.coachskin",
                                                                    "org.coachskin." + name));
                                            allowed.forEach(
                                                    other -> open.add("org.coachskin." + other));
                                            open.addAll(
                                                    List.of(
                                                            "java..",
                                                            "org.jspecify..",
                                                            "org.ejml..",
                                                            "org.apache.commons.math3.."));
                                            classes()
                                                    .that()
                                                    .resideInAPackage("org.coachskin." + name)
                                                    .should()
                                                    .onlyDependOnClassesThat()
                                                    .resideInAnyPackage(open.toArray(String[]::new))
                                                    .allowEmptyShould(true)
                                                    .check(CORE);
                                        })));
        return tests;
    }
}
