package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Tells in sentences what a belief makes likelier. */
final class BoatHistories {

    /** A cause that rose by less than one chance in ten is not worth a sentence. */
    private static final double LEAST_RISE = 0.1;

    /** Evidence that moves the odds by less than a quarter is not worth naming. */
    private static final double LEAST_LOG_ODDS = Math.log(1.25);

    /** A fault that is less than a quarter likelier than before is not worth naming. */
    private static final double LEAST_TIMES = 1.25;

    private static final int MOST_REASONS = 2;

    private final HiddenCauses causes;
    private final List<CauseEffect> effects;
    private final Belief belief;
    private final Set<String> reported = new HashSet<>();

    BoatHistories(HiddenCauses causes, List<CauseEffect> effects, Belief belief) {
        this.causes = causes;
        this.effects = effects;
        this.belief = belief;
        for (Evidence each : belief.evidence()) {
            if (!(each instanceof Evidence.SignalLook)) {
                reported.add(each.about());
            }
        }
    }

    List<BoatHistory> told() {
        List<CauseBelief> risen = belief.causes().stream()
                .filter(each -> each.now() - each.before() >= LEAST_RISE)
                .sorted(Comparator.comparingDouble((CauseBelief each) -> -each.now()))
                .toList();
        if (risen.isEmpty()) {
            return List.of();
        }
        Movers movers = belief.movers();
        return risen.stream().map(each -> history(each, movers)).toList();
    }

    private BoatHistory history(CauseBelief cause, Movers movers) {
        String phrase = causes.cause(cause.id()).map(HiddenCause::phrase).orElse(cause.id());
        List<String> because = movers.ofCause(cause.id()).stream()
                .filter(each -> each.logOdds() >= LEAST_LOG_ODDS)
                .map(each -> causes.phrase(each.evidence()))
                .toList();
        List<CheckBelief> consequences = consequences(cause.id());
        return new BoatHistory(cause, phrase, because, consequences, sentence(cause, phrase, because, consequences));
    }

    private List<CheckBelief> consequences(String cause) {
        List<CheckBelief> consequences = new ArrayList<>();
        for (CauseEffect each : effects) {
            if (each.cause().equals(cause)
                    && each.role() == CauseEffect.Role.FAULT
                    && belief.network().knowsCheck(each.check())
                    && !reported.contains(each.check())
                    && belief.check(each.check()).timesAsLikely() >= LEAST_TIMES) {
                consequences.add(belief.check(each.check()));
            }
        }
        consequences.sort(Comparator.comparingDouble(
                each -> each.before().majorOrWorse() - each.now().majorOrWorse()));
        return consequences;
    }

    private String sentence(CauseBelief cause, String phrase, List<String> because, List<CheckBelief> consequences) {
        String reasons = because.isEmpty()
                ? "everything seen together"
                : String.join(" and ", because.subList(0, Math.min(MOST_REASONS, because.size())));
        String sentence = String.format(Locale.ROOT, "%s: %s, %.0f %%", reasons, phrase, 100 * cause.now());
        if (consequences.isEmpty()) {
            return sentence;
        }
        CheckBelief worst = consequences.getFirst();
        return sentence
                + String.format(
                        Locale.ROOT,
                        "; %s now %.1f times as likely (%s instead of %s)",
                        causes.faultPhrase(worst.id()),
                        worst.timesAsLikely(),
                        percent(worst.now().majorOrWorse()),
                        percent(worst.before().majorOrWorse()));
    }

    private static String percent(double chance) {
        return chance >= 0.1
                ? String.format(Locale.ROOT, "%.0f %%", 100 * chance)
                : String.format(Locale.ROOT, "%.1f %%", 100 * chance);
    }
}
