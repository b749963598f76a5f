package org.keelweigh.condition;

import java.util.Comparator;
import java.util.List;

/**
 * How likely one hidden cause of a boat is, and which findings and signs made it so.
 *
 * @param id the cause's id
 * @param label its name in plain words
 * @param before its chance when nothing was observed, in (0, 1)
 * @param now its chance after the evidence, in [0, 1]
 * @param moved what moved it, strongest first
 */
public record CauseAccount(String id, String label, double before, double now, List<Moved> moved) {

    /** Evidence that moves the natural logarithm of the odds by less is not worth naming. */
    private static final double LEAST_LOG_ODDS = 0.1;

    public CauseAccount {
        moved = List.copyOf(moved);
    }

    /**
     * One finding or sign and what it did to a cause.
     *
     * @param about the id of the check or signal
     * @param phrase what was observed, in words
     * @param logOdds by how much it moved the natural logarithm of the odds; positive when it made the cause likelier
     */
    public record Moved(String about, String phrase, double logOdds) {}

    /**
     * Gives an account of every cause that can hold for a boat, the likeliest first. Takes one more weighing for each piece of
     * evidence.
     *
     * @param causes the catalogue that the belief was made with
     * @param belief what is believed about the boat
     */
    public static List<CauseAccount> of(HiddenCauses causes, Belief belief) {
        Movers movers = belief.movers();
        return belief.causes().stream()
                .sorted(Comparator.comparingDouble((CauseBelief each) -> -each.now()))
                .map(each -> account(causes, each, movers))
                .toList();
    }

    private static CauseAccount account(HiddenCauses causes, CauseBelief cause, Movers movers) {
        String label = causes.cause(cause.id()).map(HiddenCause::label).orElse(cause.id());
        List<Moved> moved = movers.ofCause(cause.id()).stream()
                .filter(each -> Math.abs(each.logOdds()) >= LEAST_LOG_ODDS)
                .map(each -> new Moved(each.evidence().about(), causes.phrase(each.evidence()), each.logOdds()))
                .toList();
        return new CauseAccount(cause.id(), label, cause.before(), cause.now(), moved);
    }
}
