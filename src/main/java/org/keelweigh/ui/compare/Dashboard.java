package org.keelweigh.ui.compare;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.WeightSet;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.ClashWords;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.chart.BoatChart;
import org.keelweigh.ui.shell.Background;
import org.keelweigh.ui.shell.Latest;
import org.keelweigh.ui.shell.Undo;

/**
 * The whole comparison of two or more boats. Facts are measured once; while a slider moves, only what follows from the weights
 * is shown anew, and what takes longer waits until it is let go.
 */
class Dashboard extends Div implements MattersSection.Listener {

    private final transient AppraisalService appraisal;
    private final transient Edits edits;
    private final transient Latest<NextChecks> advice;
    private final transient BiConsumer<ShortlistId, Optional<PersonId>> chosen;
    private final RadioButtonGroup<Optional<PersonId>> chooser = new RadioButtonGroup<>();
    private final AnswerStrip answer = new AnswerStrip();
    private final CheckSection checks = new CheckSection();
    private final TogetherSection together = new TogetherSection();
    private final MattersSection matters;
    private final transient List<Part> live;
    private final transient List<Part> settled;
    private transient Weighing weighing;
    private transient Map<String, Double> atFirst;

    Dashboard(
            AppraisalService appraisal,
            ShortlistEditing editing,
            Background background,
            Facts facts,
            Consumer<CandidateData> add,
            BiConsumer<ShortlistId, Optional<PersonId>> chosen) {
        this.appraisal = appraisal;
        Display display = Display.of(facts.shortlist());
        ClashWords words =
                new ClashWords(display, id -> appraisal.catalogues().words(id).orElse(id));
        this.edits = new Edits(editing, facts.shortlist().id(), words, this::refresh);
        this.advice = new Latest<>(background, "what to check next");
        this.chosen = chosen;
        weighing = Weighing.of(appraisal.measure(facts), Optional.empty());
        atFirst = weighing.points();
        matters = new MattersSection(weighing.measured().yardsticks(), display, this);
        BoatCards cards = new BoatCards();
        ValueSection value = new ValueSection();
        StripSection strips = new StripSection();
        CostValueSection costValue = new CostValueSection();
        MoneySection money = new MoneySection();
        SureSection sure = new SureSection();
        YearsSection years = new YearsSection();
        LaunchSection launch = new LaunchSection(appraisal.catalogues().haul());
        SideBySideSection side = new SideBySideSection(edits::remove);
        WhySection why = new WhySection();
        FirmnessSection firmness = new FirmnessSection();
        TieSection ties = new TieSection();
        RulingsSection rulings = new RulingsSection(edits::lift);
        live = List.of(answer, value, strips, costValue, sure, why);
        settled = List.of(cards, money, years, launch, side, firmness, ties, together, rulings);
        choosable(why, value.bars(), costValue.picture(), money.build(), launch.drawing(), sure.shares(), years.fan());
        prepareChooser();
        Fold more = new Fold("Add another boat");
        more.put(new AddBoat(display, add));
        Div bars = column(value, strips);
        bars.addClassName("kw-beside-sliders");
        add(chooser, answer, cards, pair(bars, matters), pair(costValue, money), pair(sure, checks), launch, side);
        add(pair(column(why, ties), firmness), pair(years, together), rulings, more);
        addClassName("kw-stack");
        offerPerspectives();
        showAll();
    }

    private static Div pair(Component left, Component right) {
        Div pair = new Div(left, right);
        pair.addClassName("kw-pair");
        return pair;
    }

    private static Div column(Component... components) {
        Div column = new Div(components);
        column.addClassName("kw-stack");
        return column;
    }

    private void choosable(WhySection why, BoatChart<?>... charts) {
        for (BoatChart<?> chart : charts) {
            chart.addBoatSelectedListener(event -> weighing.measured().boats().stream()
                    .map(BoatReport::id)
                    .filter(each -> each.toString().equals(event.boatId()))
                    .findFirst()
                    .ifPresent(why::choose));
        }
    }

    private void prepareChooser() {
        chooser.setLabel("Seen through the eyes of");
        chooser.setTestId("perspective");
        chooser.addClassName("kw-chooser");
        chooser.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                look(change.getValue());
                chosen.accept(weighing.measured().facts().shortlist().id(), change.getValue());
            }
        });
    }

    private void offerPerspectives() {
        boolean revealed = weighing.measured().revealed();
        List<Perspective> all = revealed
                ? weighing.measured().perspectives()
                : weighing.measured().perspectives().subList(0, 1);
        chooser.setHelperText(
                revealed
                        ? null
                        : "Each one's own view is hidden until all have said on the weighing page that they are done.");
        chooser.setItems(all.stream().map(Perspective::person).toList());
        chooser.setItemLabelGenerator(
                person -> weighing.measured().perspective(person).name());
        chooser.setValue(weighing.stated().person());
        chooser.setVisible(weighing.measured().perspectives().size() > 1);
        together.setVisible(revealed);
    }

    @Override
    protected void onAttach(AttachEvent event) {
        advise();
    }

    /** Looks through one person's eyes, or everybody's. */
    void look(Optional<PersonId> person) {
        weighing = Weighing.of(weighing.measured(), weighing.measured().revealed() ? person : Optional.empty());
        atFirst = weighing.points();
        chooser.setValue(weighing.stated().person());
        showAll();
    }

    /** Shows changed facts; a trial of weights goes on. */
    void update(Facts facts) {
        if (facts.equals(weighing.measured().facts())) {
            return;
        }
        Weighing before = weighing;
        Weighing now = Weighing.of(appraisal.measure(facts), before.stated().person());
        weighing = before.together() && before.moved() && now.together() ? now.withPoints(before.points()) : now;
        offerPerspectives();
        showAll();
    }

    private void refresh() {
        edits.facts().ifPresent(this::update);
    }

    private Glance glance() {
        Perspective perspective = weighing.perspective();
        return new Glance(
                weighing.measured(),
                perspective,
                appraisal.outlook(weighing.measured().facts()).confidence(perspective));
    }

    private void showAll() {
        showSettled(showLive());
    }

    private Glance showLive() {
        Glance glance = glance();
        live.forEach(each -> each.show(glance));
        boolean returnable =
                weighing.together() ? weighing.moved() : !weighing.points().equals(atFirst);
        matters.show(weighing, glance.perspective(), explained(), returnable);
        return glance;
    }

    private void showSettled(Glance glance) {
        settled.forEach(each -> each.show(glance));
        advise();
    }

    private void advise() {
        getUI().ifPresent(ui -> {
            Glance glance = glance();
            answer.awaitNext();
            checks.await();
            advice.ask(ui, () -> appraisal.nextChecks(glance.measured().facts(), glance.perspective()), found -> {
                answer.showNext(glance, found);
                checks.show(glance, found);
            });
        });
    }

    private String explained() {
        if (!weighing.together()) {
            return weighing.stated().person().isEmpty()
                    ? "Saved as yours as soon as you let go."
                    : "Saved for " + weighing.stated().name() + " as soon as you let go.";
        }
        return weighing.moved()
                ? "A trial: these points are nobody's and are not saved. To change what somebody said, choose them above."
                : "The mean of what each of you said. Move anything to try it out; it is not saved.";
    }

    @Override
    public void moved(String criterion, double points) {
        weighing = weighing.with(criterion, points);
        showLive();
    }

    @Override
    public void released() {
        if (weighing.together() || !weighing.moved()) {
            showSettled(glance());
        } else {
            edits.save(
                    weighing.stated().person().flatMap(weighing.measured().facts()::person),
                    weighing.stated().name(),
                    weighing.points());
        }
    }

    @Override
    public void replaced(Map<String, Double> points, String done) {
        Map<String, Double> before = weighing.points();
        use(points);
        Undo.offer(done, () -> use(before));
    }

    @Override
    public void started(WeightSet set) {
        replaced(set.points(), "The points are those of \"" + set.name() + "\".");
    }

    @Override
    public void returned() {
        use(
                weighing.together()
                        ? Weighing.of(weighing.measured(), Optional.empty()).points()
                        : atFirst);
    }

    private void use(Map<String, Double> points) {
        weighing = weighing.withPoints(points);
        showLive();
        released();
    }
}
