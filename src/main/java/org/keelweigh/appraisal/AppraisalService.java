package org.keelweigh.appraisal;

import java.time.Clock;
import java.time.Year;
import java.util.LinkedHashMap;
import java.util.Map;
import org.keelweigh.shortlist.Facts;
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

    /** Measures a shortlist, or finds it measured already. */
    public Measured measure(Facts facts) {
        synchronized (kept) {
            Measured known = kept.get(facts);
            if (known != null) {
                return known;
            }
        }
        Measured measured = appraiser.measure(facts, Year.now(clock).getValue());
        synchronized (kept) {
            kept.put(facts, measured);
        }
        return measured;
    }

    /** Tells the catalogues that shortlists are measured by. */
    public Catalogues catalogues() {
        return appraiser.catalogues();
    }
}
