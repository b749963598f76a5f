package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.CatalogueException;
import org.keelweigh.catalogue.Row;
import org.keelweigh.catalogue.Table;

/**
 * What to look at on a used boat, what can come out of it, what that costs, and how well each way of knowing works.
 *
 * <p>Read from the tables {@code checks.csv}, {@code grades.csv}, {@code methods.csv} and {@code materials.csv}. The
 * method stands in {@code docs/method/condition.md}.
 */
public final class InspectionCatalogue {

    /** Use days a year when nobody said. */
    public static final double USUAL_USE_DAYS_PER_YEAR = 18;

    /** The age from which a boat is not taken to get worse by age alone: an estimate. */
    public static final int AGES_UNTIL_YEARS = 25;

    private static final double TABLE_AGE_YEARS = 5;
    private static final double TABLE_USE_DAYS = TABLE_AGE_YEARS * USUAL_USE_DAYS_PER_YEAR;
    private static final double AGE_EXPONENT = 0.8;
    private static final double USE_EXPONENT = 0.9;

    /** Chances in the tables are written with three decimals. */
    private static final double SUM_TOLERANCE = 0.0015;

    private final Map<String, Check> checks;
    private final Map<Method, Detection> detections;
    private final Map<HullMaterial, MaterialFacts> materials;

    private InspectionCatalogue(
            Map<String, Check> checks, Map<Method, Detection> detections, Map<HullMaterial, MaterialFacts> materials) {
        this.checks = checks;
        this.detections = detections;
        this.materials = materials;
    }

    /**
     * Reads and validates the catalogue.
     *
     * @throws CatalogueException naming file and line of what is wrong
     */
    public static InspectionCatalogue read(Catalogue catalogue) {
        Table checkTable = catalogue.table("checks.csv").unique("check");
        Set<String> ids =
                checkTable.rows().stream().map(row -> row.text("check")).collect(Collectors.toSet());
        Map<String, List<Grade>> grades = readGrades(catalogue.table("grades.csv"), ids);
        Map<String, Check> checks = readChecks(checkTable, grades);
        Map<Method, Detection> detections = new EnumMap<>(Method.class);
        Table methods = catalogue.table("methods.csv").unique("method");
        methods.map(Detection::of).forEach(each -> detections.put(each.method(), each));
        requireAll(methods, Method.class, detections.keySet());
        Map<HullMaterial, MaterialFacts> materials = new EnumMap<>(HullMaterial.class);
        Table facts = catalogue.table("materials.csv").unique("material");
        facts.map(MaterialFacts::of).forEach(each -> materials.put(each.material(), each));
        requireAll(facts, HullMaterial.class, materials.keySet());
        return new InspectionCatalogue(checks, detections, materials);
    }

    private static Map<String, List<Grade>> readGrades(Table table, Set<String> checks) {
        Map<String, List<Grade>> byCheck = new LinkedHashMap<>();
        table.map(row -> {
            Grade grade = Grade.of(row);
            if (!checks.contains(grade.check())) {
                throw row.complaint("there is no check \"" + grade.check() + "\" in checks.csv");
            }
            List<Grade> ofCheck = byCheck.computeIfAbsent(grade.check(), id -> new ArrayList<>());
            if (!ofCheck.isEmpty() && ofCheck.getLast().outcome().compareTo(grade.outcome()) >= 0) {
                throw row.complaint("the grades of " + grade.check() + " run from minor over major to stop, each once");
            }
            return ofCheck.add(grade);
        });
        return byCheck;
    }

    private static Map<String, Check> readChecks(Table table, Map<String, List<Grade>> grades) {
        Map<String, Check> checks = new LinkedHashMap<>();
        Zone[] reached = {Zone.values()[0]};
        table.map(row -> {
            Check check = Check.of(row, grades.getOrDefault(row.text("check"), List.of()));
            requireGraded(row, check);
            if (check.zone().compareTo(reached[0]) < 0) {
                throw row.complaint("the zone " + check.zone().code() + " comes before " + reached[0].code()
                        + "; checks stand in the order of their zones");
            }
            reached[0] = check.zone();
            return checks.put(check.id(), check) == null;
        });
        return checks;
    }

    private static void requireGraded(Row row, Check check) {
        if (check.grades().isEmpty()) {
            throw row.complaint("the check " + check.id() + " has no line in grades.csv");
        }
        double sum = check.fineChance()
                + check.grades().stream().mapToDouble(Grade::chance).sum();
        if (Math.abs(sum - 1) > SUM_TOLERANCE) {
            throw row.complaint("fine_chance and the chances in grades.csv sum to "
                    + Math.round(sum * 10_000) / 10_000.0 + " for " + check.id() + ", but have to sum to 1");
        }
    }

    private static <E extends Enum<E> & Coded> void requireAll(Table table, Class<E> type, Set<E> found) {
        for (E each : type.getEnumConstants()) {
            if (!found.contains(each)) {
                throw new CatalogueException(table.file(), 1, "there is no line for " + each.code());
            }
        }
    }

    /** Tells all checks in zone order. */
    public List<Check> checks() {
        return List.copyOf(checks.values());
    }

    /** Finds a check by its id. */
    public Optional<Check> check(String id) {
        return Optional.ofNullable(checks.get(id));
    }

    /** Tells the checks that apply to {@code boat}, in zone order, each with only the grades that are faults on it. */
    public List<Check> applicable(Boat boat) {
        return checks.values().stream()
                .filter(each -> each.applies().to(boat))
                .map(each -> each.on(boat))
                .sorted(Comparator.comparing(Check::zone))
                .toList();
    }

    /** Tells how a hull material shows damage and is put right. */
    public MaterialFacts material(HullMaterial material) {
        return materials.get(material);
    }

    /**
     * Tells how likely each outcome is before anybody looked.
     *
     * <p>The table's chances are for five years and ninety days of use. The odds of every fault are multiplied by
     * {@code (age / 5)^0.8} where wear, sun or rubber is the reason and by {@code (use days / 90)^0.9} where the drive's
     * use is. Beyond {@value #AGES_UNTIL_YEARS} years age adds nothing: what is still afloat then has shown that it lasts. Estimates
     * from common practice.
     *
     * @param ageYears the boat's age, years, 0 or more
     * @param useDays days of use over its whole life, 0 or more
     */
    public OutcomeChances priorOutcomes(Check check, double ageYears, double useDays) {
        return check.chancesAtFiveYears().withFaultOddsTimes(oddsFactor(check.ageing(), ageYears, useDays));
    }

    private static double oddsFactor(Ageing ageing, double ageYears, double useDays) {
        requireNotNegative("age", ageYears, "years");
        requireNotNegative("use", useDays, "days");
        return switch (ageing) {
            case WEAR, SUN, RUBBER -> Math.pow(Math.min(ageYears, AGES_UNTIL_YEARS) / TABLE_AGE_YEARS, AGE_EXPONENT);
            case DRIVE -> Math.pow(useDays / TABLE_USE_DAYS, USE_EXPONENT);
            case NONE -> 1;
        };
    }

    private static void requireNotNegative(String what, double value, String unit) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("The " + what + " is 0 " + unit + " or more, not " + value);
        }
    }

    /** Tells the chance that {@code method} finds a fault that is there, 0 to 1. */
    public double sensitivity(Check check, Method method) {
        Method effective = method == Method.ON_WATER && check.water() == WaterNeed.NO ? Method.SEEN : method;
        return detection(effective).sensitivity(check);
    }

    /** Tells the chance that {@code method} reports a fault where none is, 0 to 1. */
    public double falseAlarm(Method method) {
        return detection(method).falseAlarm();
    }

    /**
     * Tells what remains likely after {@code method} reported the check fine, by Bayes' rule: a fault was missed with chance
     * {@code 1 - sensitivity}, a sound part was reported fine with chance {@code 1 - false alarm}. A way of knowing that
     * finds fewer faults than it imagines tells nothing.
     *
     * @param before the chances before the report
     */
    public OutcomeChances afterReportedFine(Check check, OutcomeChances before, Method method) {
        double falseAlarm = falseAlarm(method);
        double missed = 1 - Math.max(sensitivity(check, method), falseAlarm);
        return before.withFaultOddsTimes(missed / (1 - falseAlarm));
    }

    private Detection detection(Method method) {
        return detections.get(method);
    }
}
