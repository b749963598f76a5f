package org.keelweigh.boat.identity;

import java.time.Year;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Judges dates and country letters of a well-formed number. Dates before 1984 rest on secondary sources. */
final class DateChecks {

    /** Numbers have been required since 1 November 1972 (secondary sources agree). */
    private static final YearMonth REQUIRED_SINCE = YearMonth.of(1972, 11);

    /** The present layout was allowed from 1 January 1984 and the only one from 1 August 1984 (same sources). */
    private static final YearMonth PRESENT_ALLOWED_SINCE = YearMonth.of(1984, 1);

    private static final YearMonth PRESENT_ONLY_SINCE = YearMonth.of(1984, 8);

    /** Makers start a model year up to a few months early; from this many on it is worth a question (our rule). */
    private static final int MONTHS_EARLY_UNUSUAL = 7;

    private static final int MODEL_YEAR_START_MONTH = 8;

    private static final Set<String> COUNTRIES = Set.of(Locale.getISOCountries());

    private static final Set<String> STATES = Set.of(("AL AK AZ AR CA CO CT DE FL GA HI ID IL IN IA KS KY LA ME MD "
                    + "MA MI MN MS MO MT NE NV NH NJ NM NY NC ND OH OK OR PA RI SC SD TN TX UT VT VA WA WV WI WY")
            .split(" "));

    private final HullNumber number;
    private final int thisYear;
    private final List<Observation> found = new ArrayList<>();

    private DateChecks(HullNumber number, int thisYear) {
        this.number = number;
        this.thisYear = thisYear;
    }

    /** Observations, gravest first. */
    static List<Observation> of(HullNumber number, Year today) {
        DateChecks checks = new DateChecks(number, today.getValue());
        checks.country();
        checks.future();
        switch (number.layout()) {
            case CURRENT -> checks.presentLayout();
            case STRAIGHT_YEAR -> checks.oldLayout();
            case MODEL_YEAR_LETTER -> checks.modelYearLayout();
        }
        return checks.found.stream()
                .sorted(Comparator.comparing(Observation::weight).reversed())
                .toList();
    }

    private void tell(Observation.Weight weight, String sentence) {
        found.add(new Observation(weight, sentence));
    }

    private void country() {
        number.country()
                .filter(letters -> !COUNTRIES.contains(letters))
                .ifPresent(letters -> tell(
                        Observation.Weight.UNUSUAL,
                        "The letters " + letters + " in front are not an ISO 3166 country code."));
        if (number.makerCode().endsWith("Z")
                && STATES.contains(number.makerCode().substring(0, 2))) {
            tell(
                    Observation.Weight.NOTE,
                    "The maker's code " + number.makerCode()
                            + " is state letters and Z, the usual code of a boat somebody built at home.");
        }
        if (number.makerCode().chars().anyMatch(Character::isDigit)) {
            tell(Observation.Weight.NOTE, "The maker's code holds a digit, which US codes do not have.");
        }
    }

    private void future() {
        List<Integer> years = number.certificationYears();
        if (!years.isEmpty() && years.stream().allMatch(year -> year > thisYear)) {
            tell(
                    Observation.Weight.IMPOSSIBLE,
                    "It gives " + years.getFirst() + " as the year of building, which is still to come.");
        }
        number.modelYear().filter(year -> year > thisYear).ifPresent(year -> {
            if (year == thisYear + 1) {
                tell(
                        Observation.Weight.NOTE,
                        "Model year " + year + " is next year's; that is usual from about August on.");
            } else {
                tell(Observation.Weight.IMPOSSIBLE, "It gives model year " + year + ", which is still to come.");
            }
        });
    }

    private void presentLayout() {
        int model = number.modelYear().orElseThrow();
        if (number.certified().isEmpty()) {
            tell(
                    Observation.Weight.UNUSUAL,
                    "The year digit " + number.dateMarks().charAt(1) + " fits none of the years " + (model - 2) + " to "
                            + (model + 1) + ", so the year of building cannot be told.");
            return;
        }
        YearMonth built = number.certified().get();
        if (built.isBefore(PRESENT_ALLOWED_SINCE)) {
            tell(Observation.Weight.UNUSUAL, "It is dated " + built + "; this layout came into use on 1 January 1984.");
        }
        YearMonth start = YearMonth.of(model - 1, MODEL_YEAR_START_MONTH);
        long early = built.until(start, ChronoUnit.MONTHS);
        if (early >= MONTHS_EARLY_UNUSUAL) {
            tell(
                    Observation.Weight.UNUSUAL,
                    "It is dated " + built + ", " + early + " months before model year " + model + " begins in August "
                            + (model - 1) + "; that is early.");
        }
        if (built.getYear() > model) {
            tell(
                    Observation.Weight.UNUSUAL,
                    "It is dated " + built + ", after the end of its model year " + model + ".");
        }
    }

    private void oldLayout() {
        if (number.certificationYears().size() > 1) {
            tell(
                    Observation.Weight.UNUSUAL,
                    "The year digits may mean "
                            + String.join(
                                    " or ",
                                    number.certificationYears().stream()
                                            .map(String::valueOf)
                                            .toList())
                            + "; this layout was used from 1972 to 1984 only.");
        }
        beforeOrAfterOldLayouts();
    }

    private void modelYearLayout() {
        if (number.month() >= MODEL_YEAR_START_MONTH) {
            tell(
                    Observation.Weight.NOTE,
                    "Month letters A to E are August to December of the year before the model year.");
        }
        beforeOrAfterOldLayouts();
    }

    private void beforeOrAfterOldLayouts() {
        YearMonth built = number.certified().orElseThrow();
        if (built.isBefore(REQUIRED_SINCE)) {
            tell(
                    Observation.Weight.UNUSUAL,
                    "It is dated " + built + ", before hull numbers were required on 1 November 1972.");
        } else if (!built.isBefore(PRESENT_ONLY_SINCE)) {
            tell(Observation.Weight.UNUSUAL, "It is dated " + built + ", but this layout ended on 31 July 1984.");
        }
    }
}
