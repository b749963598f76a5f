package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.keelweigh.appraisal.Confidence;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.RankShares;
import org.keelweigh.ui.chart.RankSharesData;

/** How sure the order is: how often each boat takes each place. */
class SureSection extends Fold implements Part {

    private final RankShares shares = new RankShares("How often each boat comes first, second and so on");
    private final Paragraph note = new Paragraph();

    SureSection() {
        super("How sure it is");
        setId("sure");
        note.addClassName("kw-soft");
        put(shares, note);
    }

    RankShares shares() {
        return shares;
    }

    @Override
    public void show(Glance glance) {
        boolean any = !choices(glance).isEmpty();
        shares.setVisible(any);
        if (any) {
            shares.setData(data(glance));
        }
        note.setText(
                any
                        ? "Out of " + Display.number(glance.confidence().samples(), 0)
                                + " weighings: in each, what nobody knows yet is drawn anew, and the weights move as far as people are unsure of them. A share is right to about "
                                + Display.number(200 * glance.confidence().largestError(), 1) + " in 100."
                        : "Every boat is ruled out.");
    }

    private static List<Integer> choices(Glance glance) {
        return glance.order().stream()
                .filter(place -> !glance.perspective().ruledOut(place))
                .toList();
    }

    static RankSharesData data(Glance glance) {
        List<Integer> places = choices(glance);
        OptionalInt leader = glance.perspective().ranking().leader();
        String summary = leader.isPresent()
                ? glance.name(leader.getAsInt()) + " comes first in "
                        + Confidence.inWords(glance.confidence().chanceBest(leader.getAsInt())) + " weighings."
                : "No boat is left.";
        return new RankSharesData(
                summary,
                places.stream().map(place -> boat(glance, place, places.size())).toList());
    }

    private static RankSharesData.Boat boat(Glance glance, int place, int count) {
        List<Double> percent = new ArrayList<>(IntStream.range(0, count)
                .mapToObj(better -> 100 * glance.confidence().rankShare(place, better))
                .toList());
        return new RankSharesData.Boat(
                glance.id(place),
                glance.name(place),
                percent.stream().map(each -> Math.clamp(each, 0.0, 100.0)).toList(),
                "first in " + Confidence.inWords(glance.confidence().chanceBest(place)));
    }
}
