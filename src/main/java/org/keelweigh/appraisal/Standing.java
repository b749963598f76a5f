package org.keelweigh.appraisal;

import java.util.OptionalInt;
import org.keelweigh.decision.Ranking;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Display;

/**
 * How one boat stands among the others, in a line.
 *
 * @param sentence the line
 * @param ruledOut whether a hard rule rules it out
 * @param leads whether it comes first
 */
public record Standing(String sentence, boolean ruledOut, boolean leads) {

    private static final String[] PLACES = {"first", "second", "third", "fourth", "fifth"};

    /** Tells how a boat stands for all deciders together. */
    public static Standing of(Measured measured, CandidateId boat) {
        int place = -1;
        for (int i = 0; i < measured.boats().size(); i++) {
            place = measured.boats().get(i).id().equals(boat) ? i : place;
        }
        if (place < 0) {
            throw new IllegalArgumentException("There is no boat " + boat + " on this shortlist");
        }
        return of(measured, measured.perspectives().getFirst(), place);
    }

    private static Standing of(Measured measured, Perspective perspective, int place) {
        BoatReport report = measured.boats().get(place);
        Ranking ranking = perspective.ranking();
        OptionalInt leader = ranking.leader();
        String other = leader.isPresent() && leader.getAsInt() != place
                ? " " + measured.boats().get(leader.getAsInt()).name() + " leads with "
                        + points(ranking, leader.getAsInt()) + "."
                : "";
        if (report.ruledOut()) {
            String reason = report.ruledOutBy().orElseThrow().reason();
            return new Standing(report.name() + " is ruled out: " + reason + other, true, false);
        }
        int count = measured.boats().size();
        boolean leads = leader.isPresent() && leader.getAsInt() == place;
        String rank = count == 1
                ? report.name() + " has " + points(ranking, place) + "; there is no other boat to compare with."
                : report.name() + " is " + place(ranking.rank(place)) + " of " + count + " with "
                        + points(ranking, place) + ".";
        return new Standing(rank + other, false, leads);
    }

    private static String points(Ranking ranking, int boat) {
        return Display.number(ranking.total(boat), 0) + " of 100 points";
    }

    private static String place(int rank) {
        return rank <= PLACES.length ? PLACES[rank - 1] : "number " + rank;
    }
}
