package org.keelweigh.appraisal;

import java.time.Clock;
import java.time.Year;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.ShortlistId;
import org.springframework.stereotype.Service;

/**
 * Measures shortlists and keeps the last state of the last few, because moving a weight must not measure anew, and changing
 * one boat must not measure the others.
 */
@Service
public class AppraisalService {

    private static final int KEPT = 24;

    private final Appraiser appraiser;
    private final Clock clock;
    private final Map<ShortlistId, Kept> kept = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<ShortlistId, Kept> eldest) {
            return size() > KEPT;
        }
    };

    private record Kept(Measured measured, Outlook outlook) {}

    AppraisalService(Appraiser appraiser, Clock clock) {
        this.appraiser = appraiser;
        this.clock = clock;
    }

    /** Measures a shortlist, or finds it measured already. */
    public Measured measure(Facts facts) {
        return keep(facts).measured();
    }

    /** Prepares the outlook on a shortlist's futures, or finds it prepared already. */
    public Outlook outlook(Facts facts) {
        return keep(facts).outlook();
    }

    /** Works out what to check next. This takes a moment; do it off the thread that draws. */
    public NextChecks nextChecks(Facts facts, Perspective perspective) {
        return CheckAdvisor.advise(appraiser.catalogues(), outlook(facts), perspective);
    }

    /** Tells the catalogues that shortlists are measured by. */
    public Catalogues catalogues() {
        return appraiser.catalogues();
    }

    /** Tells where, how and by whom the boats are to be used, with what was assumed; measures no boat. */
    public Situation situation(Facts facts) {
        return appraiser.situation(facts, Year.now(clock).getValue());
    }

    /**
     * Finds out which assumed figures matter most to who leads. Slow: it measures the boats many times.
     *
     * @param progress hears the share of the work that is done, 0 to 1
     */
    public Optional<UnknownsThatMatter> unknowns(Facts facts, DoubleConsumer progress) {
        return UnknownsThatMatter.find(appraiser, facts, Year.now(clock).getValue(), progress);
    }

    private Kept keep(Facts facts) {
        ShortlistId id = facts.shortlist().id();
        Optional<Kept> last = last(id);
        if (last.isPresent() && last.get().measured().facts().equals(facts)) {
            return last.get();
        }
        Measured measured = appraiser.measure(
                facts, Year.now(clock).getValue(), last.map(Kept::measured).orElse(null));
        Kept made = new Kept(measured, Outlook.of(measured));
        synchronized (kept) {
            kept.put(id, made);
        }
        return made;
    }

    private Optional<Kept> last(ShortlistId id) {
        synchronized (kept) {
            return Optional.ofNullable(kept.get(id));
        }
    }
}
