package org.keelweigh.ui.boat;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.util.ArrayList;
import java.util.List;
import org.keelweigh.fit.EasySpeed;
import org.keelweigh.fit.FitAssessment;
import org.keelweigh.fit.FitScore;
import org.keelweigh.fit.PersonFit;
import org.keelweigh.quantity.Speed;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.format.FoldingTable;

/** How the boat fits each person, the water, the home and the car, row by row. */
final class FitPart extends BoatPart {

    FitPart(BoatDesk desk) {
        super(desk);
        refresh();
    }

    @Override
    void refresh() {
        removeAll();
        FitAssessment fit = desk().report().fit();
        Div people = Plain.row("kw-columns");
        fit.people().forEach(each -> people.add(person(each, fit.boatRows())));
        add(
                people,
                Plain.sheet("Water, home and car", rows("Fit to water, home and car", fit.boatRows())),
                speed(fit.speed()));
    }

    /** What holds for everybody stands once, further down. */
    private Component person(PersonFit person, List<FitScore> shared) {
        String points = person.points().isPresent()
                ? Display.number(person.points().getAsDouble(), 0) + " of 100 points: the weakest row counts most."
                : "Nothing is known yet.";
        return Plain.sheet(
                person.paddler().name(),
                Plain.soft(points),
                rows(
                        "Fit to " + person.paddler().name(),
                        person.scores().stream()
                                .filter(each -> !shared.contains(each))
                                .toList()));
    }

    private Component rows(String caption, List<FitScore> scores) {
        List<List<String>> rows = new ArrayList<>();
        scores.forEach(each -> rows.add(row(each)));
        return FoldingTable.of(caption, List.of("what", "why", "measure", "points of 100"), rows, 2);
    }

    private List<String> row(FitScore score) {
        String label = Plain.capital(score.row().label());
        return switch (score) {
            case FitScore.Scored scored ->
                List.of(
                        label,
                        scored.dealBreaker().map(why -> why + " ").orElse("")
                                + scored.note()
                                + (scored.assumed() ? " Rests on an assumption." : ""),
                        scored.row().write(scored.measure(), desk().display()),
                        Display.number(scored.points(), 0));
            case FitScore.Unknown unknown -> List.of(label, "Needed: " + unknown.needed(), "not known", "–");
        };
    }

    private Component speed(EasySpeed speed) {
        Display display = desk().display();
        return Plain.sheet(
                "Easy cruising speed",
                Plain.soft("About " + write(speed.kmPerH()) + ", at an effort that lasts for hours; an estimate."),
                Plain.details(
                        "How it is reckoned",
                        Plain.soft("4.5 √LWL km/h is the speed of a wave as long as the waterline, here "
                                + write(speed.limitKmPerH())
                                + "; a boat goes easily at a share of it that grows with length over beam. Wave speed: J. N. "
                                + "Newman, Marine Hydrodynamics, 1977; the share is common practice."),
                        Plain.soft("As a check, 15 W of useful power balances drag at " + write(speed.frictionKmPerH())
                                + ". Friction by the ITTC-1957 line, C_f = 0.075 / (log₁₀ Re − 2)²: "
                                + display.force(speed.frictionN()) + " at the easy speed.")));
    }

    private String write(double kmPerH) {
        return desk().display().speed(Speed.ofKmPerHour(kmPerH).mPerS());
    }
}
