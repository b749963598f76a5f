package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.haul.CartAnswer;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.haul.HaulCatalogue;
import org.keelweigh.haul.LiftBand;
import org.keelweigh.haul.RoofLoading;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.CartDrawing;
import org.keelweigh.ui.chart.CartDrawingData;
import org.keelweigh.ui.chart.CartDrawingData.Scene;
import org.keelweigh.ui.format.CartScene;

/** How each boat gets from the car to the water: the drawing, the verdicts in words, and one cart for all. */
class LaunchSection extends Fold implements Part {

    private final transient HaulCatalogue catalogue;
    private final CartDrawing drawing = new CartDrawing("Each boat on its cart on the hardest stretch, at one scale");
    private final Paragraph oneCart = new Paragraph();
    private final Div words = new Div();
    private final UnorderedList cautions = new UnorderedList();
    private transient List<BoatReport> shown = List.of();

    LaunchSection(HaulCatalogue catalogue) {
        super("From car to water");
        this.catalogue = catalogue;
        oneCart.setId("one-cart");
        words.addClassName("kw-launch-words");
        Div caution = new Div(cautions);
        caution.addClassName("kw-caution");
        Div pair = new Div(drawing, words);
        pair.addClassName("kw-pair");
        put(oneCart, pair, caution);
    }

    CartDrawing drawing() {
        return drawing;
    }

    @Override
    public void show(Glance glance) {
        if (shown.equals(glance.measured().boats())) {
            return;
        }
        shown = glance.measured().boats();
        cautions.removeAll();
        CartAnswer.cautions(glance.display()).forEach(each -> cautions.add(new ListItem(each)));
        oneCart.setText(glance.measured().oneCart(catalogue));
        Optional<CartDrawingData> data = data(glance);
        data.ifPresent(drawing::setData);
        drawing.setVisible(data.isPresent());
        words.removeAll();
        glance.measured().boats().forEach(each -> words.add(told(each, glance.display())));
    }

    private static Div told(BoatReport boat, Display display) {
        Div told = new Div(
                new H3(boat.name()),
                cart(boat),
                new Paragraph(String.join(" ", boat.cart().reasons())));
        boat.loading().stream().map(LaunchSection::lift).forEach(told::add);
        boat.rack().warnings().forEach(each -> told.add(new Paragraph(each)));
        if (boat.cart() instanceof CartPlan plan && plan.worstHoldBackN() > 0) {
            told.add(new Paragraph("Going down, hold back " + display.force(plan.worstHoldBackN()) + "."));
        }
        return told;
    }

    private static Paragraph cart(BoatReport boat) {
        Span verdict = tag(
                boat.cart().verdict().label(),
                switch (boat.cart().verdict()) {
                    case ONE_PERSON -> "good";
                    case TWO_PEOPLE -> "warn";
                    case NOT_BY_CART -> "bad";
                });
        String what = boat.cart() instanceof CartPlan plan
                ? " on a " + plan.cart().label() + (plan.cartAssumed() ? " (assumed)" : "")
                : " with the bag";
        return new Paragraph(new Span("To the water: "), verdict, new Span(what));
    }

    private static Paragraph lift(RoofLoading loading) {
        LiftBand band = loading.alone();
        Span verdict = tag(
                band.label(),
                switch (band) {
                    case COMFORTABLE -> "good";
                    case HARD -> "warn";
                    case NO -> "bad";
                });
        return new Paragraph(new Span("Onto the car alone, end by end: "), verdict, new Span(" " + loading.advice()));
    }

    private static Span tag(String words, String tone) {
        Span tag = new Span(words);
        tag.addClassName("kw-tag");
        tag.getElement().setAttribute("data-tone", tone);
        return tag;
    }

    static Optional<CartDrawingData> data(Glance glance) {
        List<Scene> scenes = glance.measured().boats().stream()
                .flatMap(each -> scene(each, glance.display()).stream())
                .toList();
        if (scenes.isEmpty()) {
            return Optional.empty();
        }
        String summary = scenes.stream()
                .min(Comparator.comparingDouble(each -> each.forces().pull().value()))
                .map(each -> each.name() + " is the lightest to pull: "
                        + each.forces().pull().label() + ".")
                .orElseThrow();
        return Optional.of(new CartDrawingData(summary, scenes));
    }

    private static Optional<Scene> scene(BoatReport boat, Display display) {
        if (!(boat.cart() instanceof CartPlan plan)) {
            return Optional.empty();
        }
        CartScene scene = new CartScene(plan, display);
        return scene.hardest().map(leg -> scene.on(leg, boat.id().toString(), boat.name(), boat.boat()));
    }
}
