package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.Row;
import org.keelweigh.catalogue.Table;
import org.keelweigh.cost.DiscountRate;
import org.keelweigh.decision.CriteriaSet;
import org.keelweigh.decision.Criterion;
import org.keelweigh.decision.Direction;
import org.keelweigh.decision.ValueFunction;
import org.keelweigh.decision.Weights;
import org.keelweigh.decision.weight.SwingWeights;
import org.keelweigh.shortlist.PersonData;

/** The criteria and the weight sets to start from, as read from {@code criteria.csv} and {@code weight-sets.csv}. */
public final class Yardsticks {

    private static final double HUGE = 1e9;
    private static final double MOST_POINTS = 100;
    private static final int TABLE_YEARS = 5;
    /** Estimate: boats of every kind at two prices give 0.35 to 0.76, median 0.63, at any horizon from 1 to 20 years. */
    private static final double ONCE_SHARE = 0.6;

    private static final String FIRST_TIMER = "first-timer";

    private final List<Yardstick> yardsticks;
    private final CriteriaSet criteria;
    private final List<WeightSet> weightSets;

    private Yardsticks(List<Yardstick> yardsticks, List<WeightSet> weightSets) {
        this.yardsticks = List.copyOf(yardsticks);
        this.criteria =
                new CriteriaSet(yardsticks.stream().map(Yardstick::criterion).toList());
        this.weightSets = List.copyOf(weightSets);
    }

    /**
     * Reads criteria and weight sets.
     *
     * @throws org.keelweigh.catalogue.CatalogueException if a line is unusable
     */
    public static Yardsticks read(Catalogue catalogue) {
        Table table = catalogue.table("criteria.csv").unique("id");
        List<Yardstick> yardsticks = table.map(Yardsticks::yardstick);
        List<WeightSet> sets = catalogue.table("weight-sets.csv").unique("set").map(row -> weightSet(row, yardsticks));
        return new Yardsticks(yardsticks, sets);
    }

    /** Tells the same with every value function that counts money stretched to a currency. */
    public Yardsticks inCurrency(double unitsPerDollar) {
        return new Yardsticks(
                yardsticks.stream()
                        .map(each -> each.unit() == MeasureUnit.MONEY
                                ? stretched(each, unitsPerDollar, each.name(), each.meaning())
                                : each)
                        .toList(),
                weightSets);
    }

    /**
     * Tells the same for another time of ownership: the range of the cost is stretched by
     * {@code 0.6 + 0.4 UPV(H)/UPV(5)}, because about six tenths of what a boat costs over five years are paid once however long it
     * is kept, and the rest grows with the years. The money itself is never scaled.
     *
     * @param years years of ownership H
     * @param rate real discount rate
     */
    public Yardsticks overYears(int years, DiscountRate rate) {
        if (years == TABLE_YEARS) {
            return this;
        }
        double factor =
                ONCE_SHARE + (1 - ONCE_SHARE) * rate.uniformPresentValue(years) / rate.uniformPresentValue(TABLE_YEARS);
        return new Yardsticks(
                yardsticks.stream()
                        .map(each -> each.measure() == Measure.COST
                                ? stretched(each, factor, costName(years), costMeaning(each, factor))
                                : each)
                        .toList(),
                weightSets);
    }

    private static String costName(int years) {
        return "Cost over " + years + (years == 1 ? " year" : " years");
    }

    private static String costMeaning(Yardstick cost, double factor) {
        return cost.meaning() + String.format(Locale.ROOT, "; this range is %.2f times the one for five years", factor);
    }

    /** Lists the criteria in their order. */
    public List<Yardstick> all() {
        return yardsticks;
    }

    /** Tells the criteria as the decision model sees them. */
    public CriteriaSet criteria() {
        return criteria;
    }

    /** Finds the column of a measure, or -1 if the catalogue leaves it out. */
    public int column(Measure measure) {
        for (int c = 0; c < yardsticks.size(); c++) {
            if (yardsticks.get(c).measure() == measure) {
                return c;
            }
        }
        return -1;
    }

    /** Finds the name of a criterion by its id. */
    public Optional<String> name(String id) {
        return yardsticks.stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .map(Yardstick::name);
    }

    /** Lists the weight sets to start from. */
    public List<WeightSet> weightSets() {
        return weightSets;
    }

    /** Tells a person's points for each criterion: their own where they said, else those of the weight set they started from. */
    public Map<String, Double> points(PersonData person) {
        WeightSet start = weightSets.stream()
                .filter(each -> each.id().equals(person.weightSet()))
                .findFirst()
                .orElseGet(() -> weightSets.stream()
                        .filter(each -> each.id().equals(FIRST_TIMER))
                        .findFirst()
                        .orElse(weightSets.getFirst()));
        Map<String, Double> points = new LinkedHashMap<>();
        for (Yardstick each : yardsticks) {
            points.put(
                    each.id(),
                    person.weights().getOrDefault(each.id(), start.points().getOrDefault(each.id(), 0.0)));
        }
        return points;
    }

    /**
     * Tells a person's points on the scale on which they are asked for: the most important step has 100, all are whole. The
     * weights stay the same but for the rounding.
     */
    public SortedMap<String, Double> swings(PersonData person) {
        return swings(points(person));
    }

    /** Brings any weights to the scale on which swings are asked for. */
    public static SortedMap<String, Double> swings(Map<String, Double> raw) {
        double most =
                raw.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        SortedMap<String, Double> swings = new TreeMap<>();
        raw.forEach((id, points) -> swings.put(id, most == 0 ? 0 : (double) Math.round(MOST_POINTS * points / most)));
        return swings;
    }

    /** Tells a person's weights; equal ones if they gave every criterion nothing. */
    public Weights weights(PersonData person) {
        return weights(points(person));
    }

    /** Turns points into weights; equal ones if every criterion has none. */
    public Weights weights(Map<String, Double> points) {
        boolean nothing = points.values().stream().allMatch(each -> each == 0);
        return nothing ? Weights.equal(criteria.ids()) : new SwingWeights(points).weights();
    }

    private static Yardstick yardstick(Row row) {
        Family family = Coded.parse(Family.class, row.text("family"));
        List<ValueFunction.Point> points =
                row.words("points").stream().map(each -> point(row, each)).toList();
        ValueFunction function = ValueFunction.of(points);
        boolean more = points.getLast().value() >= points.getFirst().value();
        Criterion criterion = new Criterion(
                row.text("id"),
                row.text("name"),
                family.code(),
                row.text("unit"),
                more ? Direction.MORE_IS_BETTER : Direction.LESS_IS_BETTER,
                function,
                Set.copyOf(row.words("money_parts")));
        return new Yardstick(
                Coded.parse(Measure.class, row.text("id")),
                criterion,
                family,
                Coded.parse(MeasureUnit.class, row.text("unit")),
                row.text("personal").equals("yes"),
                row.number("swing_from", -HUGE, HUGE),
                row.number("swing_to", -HUGE, HUGE),
                row.text("meaning"));
    }

    private static ValueFunction.Point point(Row row, String text) {
        String[] pair = text.split(":", -1);
        if (pair.length != 2) {
            throw row.complaint("the point \"" + text + "\" is not written as measure:value");
        }
        try {
            return new ValueFunction.Point(Double.parseDouble(pair[0]), Double.parseDouble(pair[1]));
        } catch (NumberFormatException e) {
            throw row.complaint("the point \"" + text + "\" holds something that is not a number");
        }
    }

    private static WeightSet weightSet(Row row, List<Yardstick> yardsticks) {
        Map<String, Double> points = yardsticks.stream()
                .collect(Collectors.toMap(
                        Yardstick::id, each -> row.number(each.id(), 0, 100), (a, b) -> a, LinkedHashMap::new));
        return new WeightSet(row.text("set"), row.text("name"), points);
    }

    private static Yardstick stretched(Yardstick each, double factor, String name, String meaning) {
        List<ValueFunction.Point> points = new ArrayList<>();
        for (ValueFunction.Point point : each.criterion().valueFunction().points()) {
            points.add(new ValueFunction.Point(point.measure() * factor, point.value()));
        }
        Criterion old = each.criterion();
        return new Yardstick(
                each.measure(),
                new Criterion(
                        old.id(),
                        name,
                        old.family(),
                        old.unit(),
                        old.direction(),
                        ValueFunction.of(points),
                        old.countedParts()),
                each.family(),
                each.unit(),
                each.personal(),
                each.swingFrom() * factor,
                each.swingTo() * factor,
                meaning);
    }
}
