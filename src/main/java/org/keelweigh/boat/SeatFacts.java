package org.keelweigh.boat;

import org.jspecify.annotations.Nullable;

/**
 * A seat as typed; {@code null} means nobody said.
 *
 * @param stationM where the paddler's weight acts, metres from the stern
 * @param widthM inner width between the hips, metres
 */
public record SeatFacts(@Nullable Double stationM, @Nullable Double widthM) {}
