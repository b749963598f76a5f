package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Which evidence moved what. A piece of evidence moves a chance by the log-odds with it less the log-odds without it, all
 * other evidence staying; so what others already said counts for them, not for it.
 */
public final class Movers {

    /** Chances this close to 0 or 1 are taken as this far away, so that a certainty has finite log-odds. */
    private static final double LEAST_CHANCE = 1e-12;

    private final Belief belief;
    private final List<Belief> without;

    Movers(Belief belief) {
        this.belief = belief;
        without = new ArrayList<>();
        for (int i = 0; i < belief.evidence().size(); i++) {
            List<Evidence> others = new ArrayList<>(belief.evidence());
            others.remove(i);
            without.add(belief.network().believe(others));
        }
    }

    /**
     * Is one piece of evidence and what it did.
     *
     * @param evidence what was observed
     * @param logOdds by how much it moved the natural logarithm of the odds; positive when it made the matter likelier
     */
    public record Mover(Evidence evidence, double logOdds) {}

    /**
     * Ranks the evidence by how far it moved a cause, strongest first.
     *
     * @throws IllegalArgumentException if the boat has no such cause
     */
    public List<Mover> ofCause(String id) {
        return rank(each -> each.cause(id).now());
    }

    /**
     * Ranks the evidence by how far it moved the chance of a major fault or worse at a check, strongest first.
     *
     * @throws IllegalArgumentException if the boat has no such check
     */
    public List<Mover> ofCheck(String id) {
        return rank(each -> each.check(id).now().majorOrWorse());
    }

    private List<Mover> rank(ToDoubleFunction<Belief> chance) {
        double all = logOdds(chance.applyAsDouble(belief));
        List<Mover> movers = new ArrayList<>();
        for (int i = 0; i < without.size(); i++) {
            double rest = logOdds(chance.applyAsDouble(without.get(i)));
            movers.add(new Mover(belief.evidence().get(i), all - rest));
        }
        movers.sort(Comparator.comparingDouble((Mover each) -> -Math.abs(each.logOdds()))
                .thenComparing(each -> each.evidence().about()));
        return List.copyOf(movers);
    }

    private static double logOdds(double chance) {
        double inside = Math.clamp(chance, LEAST_CHANCE, 1 - LEAST_CHANCE);
        return Math.log(inside / (1 - inside));
    }
}
