package org.keelweigh.appraisal;

import java.time.Clock;
import java.time.Year;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.Person;
import org.springframework.stereotype.Service;

/** Measures shortlists and keeps the last few, because moving a weight must not measure anew. */
@Service
public class AppraisalService {

    private static final int KEPT = 24;

    private final Appraiser appraiser;
    private final Clock clock;
    private final Map<Facts, Measured> kept = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Facts, Measured> eldest) {
            return size() > KEPT;
        }
    };

    AppraisalService(Appraiser appraiser, Clock clock) {
        this.appraiser = appraiser;
        this.clock = clock;
    }

    /** Measures a shortlist, or finds it measured already, whatever people weighed meanwhile. */
    public Measured measure(Facts facts) {
        Facts measurable = unweighed(facts);
        synchronized (kept) {
            Measured known = kept.get(measurable);
            if (known != null) {
                return known.reweighed(facts);
            }
        }
        Measured measured = appraiser.measure(facts, Year.now(clock).getValue());
        synchronized (kept) {
            kept.put(measurable, measured);
        }
        return measured;
    }

    /** Tells the facts without what people weigh, which no measure depends on. */
    private static Facts unweighed(Facts facts) {
        List<Person> people = facts.people().stream()
                .map(each -> new Person(each.id(), each.shortlist(), 0, each.data().unweighed()))
                .toList();
        return new Facts(facts.shortlist(), people, facts.candidates());
    }

    /** Tells the catalogues that shortlists are measured by. */
    public Catalogues catalogues() {
        return appraiser.catalogues();
    }
}
