package org.keelweigh.ui.weigh;

import java.util.Optional;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.shortlist.Display;

/** Says where a weight cannot do what somebody may think it does. */
final class SpreadWarning {

    private static final double NARROW = 20;
    private static final double NOTHING = 0.5;
    private static final int FEWEST = 2;

    private SpreadWarning() {}

    /** Tells whether the boats are too alike on a criterion for its weight to matter; empty if they are not. */
    static Optional<String> of(Perspective mine, int criterion) {
        double spread = mine.spread(criterion);
        if (mine.size() < FEWEST || mine.share(criterion) == 0 || spread >= NARROW) {
            return Optional.empty();
        }
        return Optional.of(
                spread < NOTHING
                        ? "Your boats do not differ here: this weight tells none of them apart."
                        : "Your boats span only " + Display.number(spread, 0)
                                + " of the 100 points of this scale. The weight is for the whole step, so it moves little here.");
    }
}
