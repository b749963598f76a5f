package org.keelweigh.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the rooms of the house to the table in DEVELOPERS.md: who may use whom, and what stays pure. */
class ArchitectureTests {

    private static final String ROOT = "org.keelweigh.";

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.keelweigh");

    /** Each room with the rooms it may use. A room that is not here may not exist. */
    private static final Map<String, Set<String>> MAY_USE = Map.ofEntries(
            Map.entry("quantity", Set.of()),
            Map.entry("catalogue", Set.of()),
            Map.entry("decision", Set.of()),
            Map.entry("boat", Set.of("quantity", "catalogue")),
            Map.entry("condition", Set.of("boat", "quantity", "catalogue")),
            Map.entry("cost", Set.of("boat", "condition", "quantity", "catalogue")),
            Map.entry("haul", Set.of("boat", "quantity", "catalogue")),
            Map.entry("fit", Set.of("boat", "quantity", "catalogue")),
            Map.entry("listing", Set.of("boat", "quantity")),
            Map.entry("picture", Set.of()),
            Map.entry(
                    "shortlist",
                    Set.of("boat", "condition", "cost", "haul", "fit", "decision", "quantity", "catalogue", "picture")),
            Map.entry(
                    "appraisal",
                    Set.of(
                            "shortlist",
                            "boat",
                            "condition",
                            "cost",
                            "haul",
                            "fit",
                            "decision",
                            "quantity",
                            "catalogue")),
            Map.entry(
                    "exchange",
                    Set.of(
                            "shortlist",
                            "picture",
                            "appraisal",
                            "boat",
                            "condition",
                            "cost",
                            "haul",
                            "fit",
                            "decision",
                            "quantity",
                            "catalogue")),
            Map.entry(
                    "report",
                    Set.of(
                            "shortlist",
                            "appraisal",
                            "exchange",
                            "boat",
                            "condition",
                            "cost",
                            "haul",
                            "fit",
                            "decision",
                            "quantity")),
            Map.entry("demo", Set.of("exchange", "shortlist")),
            Map.entry(
                    "ui",
                    Set.of(
                            "appraisal",
                            "shortlist",
                            "exchange",
                            "report",
                            "picture",
                            "demo",
                            "listing",
                            "boat",
                            "condition",
                            "cost",
                            "haul",
                            "fit",
                            "decision",
                            "quantity")));

    private static final Set<String> PURE =
            Set.of("quantity", "catalogue", "boat", "condition", "cost", "haul", "fit", "decision", "listing");

    static Stream<String> rooms() {
        return MAY_USE.keySet().stream().sorted();
    }

    static Stream<String> pureRooms() {
        return PURE.stream().sorted();
    }

    @Test
    void seesTheWholeHouse() {
        assertThat(CLASSES.size()).isGreaterThan(80);
    }

    @Test
    void hasNoRoomOutsideThePlan() {
        Set<String> rooms = CLASSES.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> name.startsWith(ROOT))
                .map(name -> name.substring(ROOT.length()).split("\\.")[0])
                .collect(Collectors.toSet());

        assertThat(MAY_USE.keySet()).containsAll(rooms);
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void keepsEachRoomToTheRoomsItMayUse(String room) {
        List<String> forbidden = new ArrayList<>();
        MAY_USE.keySet().stream()
                .filter(other -> !other.equals(room) && !MAY_USE.get(room).contains(other))
                .forEach(other -> forbidden.add(ROOT + other + ".."));
        noClasses()
                .that()
                .resideInAPackage(ROOT + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(forbidden.toArray(String[]::new))
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @ParameterizedTest
    @MethodSource("pureRooms")
    void keepsComputingRoomsPlainJava(String room) {
        classes()
                .that()
                .resideInAPackage(ROOT + room + "..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "java.lang..",
                        "java.util..",
                        "java.io..",
                        "java.nio..",
                        "java.math..",
                        "java.text..",
                        "java.time..",
                        "org.jspecify..",
                        "org.apache.commons.math3..",
                        "org.apache.commons.csv..",
                        "org.keelweigh..")
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @ParameterizedTest
    @MethodSource("pureRooms")
    void keepsClocksAndGlobalChanceOutOfComputingRooms(String room) {
        noClasses()
                .that()
                .resideInAPackage(ROOT + room + "..")
                .should()
                .callMethod(Math.class, "random")
                .orShould()
                .callConstructor(java.util.Random.class)
                .orShould()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.Year.class, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @Test
    void readsCommaSeparatedTextInTheCatalogueOnly() {
        noClasses()
                .that()
                .resideOutsideOfPackages(ROOT + "catalogue..", ROOT + "exchange..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.commons.csv..")
                .check(CLASSES);
    }

    @Test
    void keepsVaadinInTheUserInterface() {
        noClasses()
                .that()
                .resideInAPackage(ROOT + "*..")
                .and()
                .resideOutsideOfPackage(ROOT + "ui..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.vaadin..")
                .check(CLASSES);
    }

    @Test
    void keepsTheDatabaseInItsStores() {
        noClasses()
                .that()
                .resideOutsideOfPackages(ROOT + "shortlist.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.springframework.data..", "java.sql..", "javax.sql..")
                .check(CLASSES);
    }

    @Test
    void keepsTheStoreBehindItsInterface() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + "shortlist.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(ROOT + "shortlist.store..")
                .check(CLASSES);
    }

    @Test
    void hasNoCyclesBetweenRooms() {
        slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void hasNoDrawers() {
        noClasses()
                .should()
                .haveSimpleNameEndingWith("Util")
                .orShould()
                .haveSimpleNameEndingWith("Utils")
                .orShould()
                .haveSimpleNameEndingWith("Helper")
                .orShould()
                .haveSimpleNameEndingWith("Manager")
                .orShould()
                .haveSimpleNameEndingWith("Impl")
                .check(CLASSES);
    }

    @Test
    void injectsThroughConstructors() {
        fields().should()
                .notBeAnnotatedWith("org.springframework.beans.factory.annotation.Autowired")
                .check(CLASSES);
    }

    @Test
    void saysInEachPackageThatNothingIsNull() {
        Set<String> unmarked = CLASSES.stream()
                .filter(each -> !each.getPackage().isAnnotatedWith(NullMarked.class))
                .map(JavaClass::getPackageName)
                .collect(Collectors.toSet());

        assertThat(unmarked).isEmpty();
    }
}
