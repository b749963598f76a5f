package org.keelweigh.exchange;

import static org.keelweigh.exchange.TextPage.right;
import static org.keelweigh.exchange.TextPage.wide;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.keelweigh.appraisal.BoatOffer;
import org.keelweigh.appraisal.CheckOutlook;
import org.keelweigh.appraisal.Confidence;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.appraisal.OfferWords;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.SecondOpinions;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.decision.robust.WeightStability;
import org.keelweigh.shortlist.Display;

/** Writes what one perspective makes of the boats: the ranking, how sure and how firm it is, and what to check next. */
final class ViewText {

    private static final int STEP = 3;
    private static final int CRITERION_WIDTH = 28;
    private static final int BOAT_WIDTH = 24;
    private static final int CHECK_WIDTH = 32;
    private static final String[] PLACES = {"first", "second", "third"};

    private final TextPage page;
    private final WholeAnswer whole;
    private final WholeAnswer.View view;
    private final Perspective perspective;
    private final Display display;
    private final List<Yardstick> criteria;
    private final List<Integer> choices;

    private ViewText(TextPage page, WholeAnswer whole, WholeAnswer.View view) {
        this.page = page;
        this.whole = whole;
        this.view = view;
        this.perspective = view.perspective();
        this.display = whole.measured().situation().display();
        this.criteria = whole.measured().yardsticks().all();
        this.choices = view.choices();
    }

    static void write(TextPage page, WholeAnswer whole, WholeAnswer.View view) {
        new ViewText(page, whole, view).all();
    }

    private void all() {
        page.title(perspective.name(), '-');
        page.say(view.answer().headline() + ".");
        view.answer().sentences().forEach(page::say);
        view.answer().changes().forEach(page::say);
        perspective.ranking().order().forEach(this::place);
        if (choices.size() > 1) {
            placeShares();
            duels();
            centralWeights();
        }
        page.blank();
        page.say("How far each weight can move before another boat leads:");
        perspective.stability().forEach(this::stability);
        rivals();
        secondOpinions();
        next(view.next());
    }

    private void place(int boat) {
        String standing = perspective.ruledOut(boat)
                ? "ruled out"
                : "best in " + display.percent(view.confidence().chanceBest(boat)) + " of weighings (±"
                        + Display.number(100 * view.confidence().chanceBestError(boat), 1) + ")";
        page.blank();
        page.say(perspective.ranking().rank(boat) + ". " + name(boat) + ": "
                + Display.number(perspective.ranking().total(boat), 1) + " of 100 points, " + standing);
        page.item(STEP, BreakEvenWords.of(view.offers().get(boat), display));
        offer(view.offers().get(boat));
        IntStream.range(0, criteria.size()).forEach(c -> contribution(boat, c));
    }

    private void offer(BoatOffer offer) {
        if (offer instanceof BoatOffer.Offer made) {
            made.plan().ifPresent(plan -> page.item(STEP, OfferWords.of(plan, display)));
            made.arguments().forEach(each -> page.item(2 * STEP, "to show the seller: " + each.label()));
        }
    }

    private void contribution(int boat, int c) {
        OptionalDouble measure = whole.measure(perspective, boat, c);
        page.line("   " + wide(criteria.get(c).name(), CRITERION_WIDTH)
                + wide(
                        measure.isEmpty() ? "by person" : criteria.get(c).unit().write(measure.getAsDouble(), display),
                        22)
                + "value " + right(Display.number(perspective.value(boat, c), 0), 3)
                + "  weight " + right(display.percent(perspective.share(c)), 5)
                + "  adds " + right(Display.number(perspective.ranking().contribution(boat, c), 1), 5));
    }

    private void placeShares() {
        Confidence confidence = view.confidence();
        page.blank();
        page.say("How often each boat takes each place, in " + Display.number(confidence.samples(), 0)
                + " weighings (a share is right to about "
                + Display.number(200 * confidence.largestError(), 1) + " in 100):");
        List<String> columns = new ArrayList<>(IntStream.range(0, choices.size())
                .mapToObj(better -> better < PLACES.length ? PLACES[better] : (better + 1) + "th")
                .toList());
        columns.addFirst("mean");
        page.table(columns, rows(boat -> {
            List<String> cells = new ArrayList<>(IntStream.range(0, choices.size())
                    .mapToObj(better -> display.percent(confidence.rankShare(boat, better)))
                    .map(ViewText::brief)
                    .toList());
            OptionalDouble mean = confidence.expectedRank(boat);
            cells.addFirst(mean.isEmpty() ? "–" : Display.number(mean.getAsDouble(), 1));
            return cells;
        }));
    }

    private void duels() {
        page.blank();
        page.say("How often the boat of the line is better than the boat of the column:");
        page.table(numbers(), rows(boat -> choices.stream()
                .map(other -> other.equals(boat)
                        ? "–"
                        : brief(display.percent(view.confidence().chanceBetter(boat, other))))
                .toList()));
    }

    /** Column by column a boat that never comes first has no such weights. */
    private void centralWeights() {
        page.blank();
        page.say("Central weights, those with which a boat comes first on average, beside those stated:");
        List<String> columns = new ArrayList<>(numbers());
        columns.addFirst("stated");
        page.table(
                columns,
                IntStream.range(0, criteria.size())
                        .mapToObj(c -> new TextPage.Row(criteria.get(c).name(), central(c)))
                        .toList());
    }

    private List<String> central(int criterion) {
        List<String> cells = new ArrayList<>();
        cells.add(brief(display.percent(perspective.share(criterion))));
        for (int boat : choices) {
            List<Double> weights = view.confidence().centralWeights(boat);
            cells.add(weights.isEmpty() ? "–" : brief(display.percent(weights.get(criterion))));
        }
        return cells;
    }

    private List<TextPage.Row> rows(IntFunction<List<String>> cells) {
        return IntStream.range(0, choices.size())
                .mapToObj(i -> new TextPage.Row((i + 1) + " " + name(choices.get(i)), cells.apply(choices.get(i))))
                .toList();
    }

    private List<String> numbers() {
        return IntStream.rangeClosed(1, choices.size())
                .mapToObj(String::valueOf)
                .toList();
    }

    private static String brief(String percent) {
        return percent.replace("under 1 %", "<1 %");
    }

    private void stability(WeightStability each) {
        String below = each.winnerBelow().isEmpty()
                ? ""
                : "; below, " + name(each.winnerBelow().getAsInt()) + " leads";
        String above = each.winnerAbove().isEmpty()
                ? ""
                : "; above, " + name(each.winnerAbove().getAsInt()) + " leads";
        page.item(
                STEP,
                criteria.get(each.criterion()).name() + ": " + display.percent(each.weight())
                        + (each.holdsEverywhere()
                                ? ", whatever it is"
                                : ", from " + display.percent(each.from()) + " to " + display.percent(each.to()) + below
                                        + above));
    }

    private void rivals() {
        if (!view.rivals().isEmpty()) {
            page.blank();
            page.say("The smallest change of weights that would put another boat first:");
            view.rivals().forEach(each -> page.item(STEP, each.sentence()));
        }
    }

    private void secondOpinions() {
        if (!view.voices().isEmpty()) {
            page.blank();
            page.say("Second opinions by other methods, which are asked but do not decide:");
            view.voices().forEach(this::voice);
        }
    }

    private void voice(SecondOpinions.Voice voice) {
        page.item(STEP, voice.method() + ". " + voice.sentence());
        page.item(
                2 * STEP,
                "Its order: " + voice.order().stream().map(this::name).collect(Collectors.joining(", "))
                        + (voice.agreement().isEmpty()
                                ? ""
                                : "; agreement of the two orders (Kendall's tau-b, −1 to 1) "
                                        + Display.number(voice.agreement().getAsDouble(), 2)
                                                .replace('-', '−'))
                        + ".");
    }

    private void next(NextChecks next) {
        page.blank();
        page.say("What to check next:");
        if (next.nothingWorthwhile()) {
            page.item(STEP, next.sentence());
            return;
        }
        page.item(
                STEP,
                "One visit of " + Display.number(next.visitMinutes(), 0) + " minutes, worth about "
                        + display.money(next.visitGain())
                        + "; making every check left on every boat would be worth about "
                        + display.money(next.everything()) + ".");
        for (CheckOutlook each : next.visit()) {
            page.line("   " + wide(name(each.boat()), BOAT_WIDTH)
                    + wide(each.check().title(), CHECK_WIDTH)
                    + right(Display.number(each.minutes(), 0), 3) + " min, "
                    + right(brief(display.percent(each.changeChance())), 4) + " change, "
                    + right(display.money(each.gain()), 6));
        }
        page.item(STEP, "Of each: its minutes, how often its result changes the choice, what it is worth on average.");
    }

    private String name(int boat) {
        return whole.measured().boats().get(boat).name();
    }
}
