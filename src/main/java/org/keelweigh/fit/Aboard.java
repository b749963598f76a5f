package org.keelweigh.fit;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A paddler together with what moving this boat asks of them.
 *
 * @param paddler the paddler
 * @param liftRatio end lift on to the car divided by their limit; {@code null} means not known
 * @param haulRatio pull on the worst stretch divided by what they keep up; {@code null} means not known
 * @param measured measures taken in this boat by row id: {@code leg-room}, {@code cockpit-exit}, {@code foot-height}
 *     (mm) and {@code reentry} (s)
 */
public record Aboard(
        Paddler paddler,
        @Nullable Double liftRatio,
        @Nullable Double haulRatio,
        Map<String, Double> measured) {

    public Aboard {
        measured = Map.copyOf(measured);
    }

    /** Makes somebody aboard of whom nothing else was measured. */
    public static Aboard of(Paddler paddler) {
        return new Aboard(paddler, null, null, Map.of());
    }
}
