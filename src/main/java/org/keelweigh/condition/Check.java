package org.keelweigh.condition;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Row;

/**
 * One thing to look at before buying, from the table {@code checks.csv}.
 *
 * @param id its id
 * @param zone where on the boat or in the sale
 * @param title its name in plain words
 * @param instruction what to do
 * @param tools what is needed for it
 * @param minutes minutes of somebody's time
 * @param waitingMinutes minutes it then runs by itself; the caution says whether to stay near
 * @param applies to which boats it applies
 * @param photoSensitivity chance that the listing's pictures show a fault that is there, 0 to 1
 * @param personSensitivity chance that a person on the spot finds a fault that is there, 0 to 1
 * @param fineLooksLike what a sound part looks like
 * @param fineChance chance that it is fine on a boat about five years old, 0 to 1
 * @param group what its repair is counted with
 * @param ageing what makes its faults likelier
 * @param water whether it needs water
 * @param ifFitted whether the part is missing on many boats, so that "not fitted" is a usual answer
 * @param readIn the unit of what is measured; {@code null} where nothing is measured
 * @param cautionNote what to beware of
 * @param source where the figures come from
 * @param grades its bad outcomes from minor to stop; a level can be missing
 */
public record Check(
        String id,
        Zone zone,
        String title,
        String instruction,
        String tools,
        double minutes,
        double waitingMinutes,
        Applies applies,
        double photoSensitivity,
        double personSensitivity,
        String fineLooksLike,
        double fineChance,
        RepairGroup group,
        Ageing ageing,
        WaterNeed water,
        boolean ifFitted,
        @Nullable ReadingUnit readIn,
        @Nullable String cautionNote,
        String source,
        List<Grade> grades) {

    /** A check that nothing passes tells nothing, and its odds could not be scaled. */
    private static final double LEAST_FINE_CHANCE = 0.01;

    private static final double LONGEST_MINUTES = 240;
    private static final double LONGEST_WAITING_MINUTES = 7 * 24 * 60;

    public Check {
        grades = List.copyOf(grades);
    }

    static Check of(Row row, List<Grade> grades) {
        return new Check(
                row.text("check"),
                Coded.parse(Zone.class, row.text("zone")),
                row.text("title"),
                row.text("instruction"),
                row.text("tools"),
                row.number("minutes", 1, LONGEST_MINUTES),
                row.optionalNumber("waiting", 0, LONGEST_WAITING_MINUTES).orElse(0.0),
                Applies.of(row),
                row.number("photo", 0, 1),
                row.number("person", 0, 1),
                row.text("fine"),
                row.number("fine_chance", LEAST_FINE_CHANCE, 1),
                Coded.parse(RepairGroup.class, row.text("group")),
                Coded.parse(Ageing.class, row.text("ageing")),
                Coded.parse(WaterNeed.class, row.text("water")),
                yes(row),
                row.optional("measure_unit")
                        .map(unit -> Coded.parse(ReadingUnit.class, unit))
                        .orElse(null),
                row.optional("caution").orElse(null),
                row.text("source"),
                grades);
    }

    private static boolean yes(Row row) {
        return switch (row.text("if_fitted")) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw row.complaint("the column if_fitted says yes or no, not " + row.text("if_fitted"));
        };
    }

    /** Tells what to beware of, where the table says so. */
    public Optional<String> caution() {
        return Optional.ofNullable(cautionNote);
    }

    /** Tells the unit of what is measured; empty where nothing is. */
    public Optional<ReadingUnit> readingUnit() {
        return Optional.ofNullable(readIn);
    }

    /**
     * Tells a reading in words, such as "measured 6 mm"; without a unit where this check names none.
     *
     * @param reading the reading in the check's unit; at most two decimals of it are told
     */
    public String told(double reading) {
        String number = BigDecimal.valueOf(reading)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        return readingUnit().map(unit -> unit.told(number)).orElse("measured " + number);
    }

    /** Finds the grade with {@code outcome}; there is none for fine, and not every check can come out every way. */
    public Optional<Grade> grade(Outcome outcome) {
        return grades.stream().filter(each -> each.outcome() == outcome).findFirst();
    }

    /** Finds the worst grade that is not worse than {@code outcome}; there is none for fine and not fitted. */
    Optional<Grade> gradeUpTo(Outcome outcome) {
        if (outcome == Outcome.NOT_FITTED) {
            return Optional.empty();
        }
        return grades.stream()
                .filter(each -> each.outcome().compareTo(outcome) <= 0)
                .reduce((lesser, worse) -> worse);
    }

    /** Tells the chances of its outcomes on a boat about five years old of which nothing else is known. */
    public OutcomeChances chancesAtFiveYears() {
        return OutcomeChances.ofFaults(chance(Outcome.MINOR), chance(Outcome.MAJOR), chance(Outcome.STOP));
    }

    private double chance(Outcome outcome) {
        return grade(outcome).map(Grade::chance).orElse(0.0);
    }

    /** Makes the same check with only the grades that are faults on this boat; the chance of the others counts as fine. */
    Check on(Boat boat) {
        List<Grade> kept = grades.stream()
                .filter(each -> each.kinds().contains(boat.kind()))
                .toList();
        if (kept.size() == grades.size()) {
            return this;
        }
        double fine = 1 - kept.stream().mapToDouble(Grade::chance).sum();
        return new Check(
                id,
                zone,
                title,
                instruction,
                tools,
                minutes,
                waitingMinutes,
                applies,
                photoSensitivity,
                personSensitivity,
                fineLooksLike,
                fine,
                group,
                ageing,
                water,
                ifFitted,
                readIn,
                cautionNote,
                source,
                kept);
    }
}
