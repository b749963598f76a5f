package org.keelweigh.shortlist;

import org.jspecify.annotations.Nullable;

/**
 * One stretch of the way from the car to the water.
 *
 * @param name what people call it
 * @param distanceM metres from car to water over this stretch
 * @param surface the surface's id in the catalogue
 * @param gradePercent how steep it is going back up from the water: metres of rise on 100 m level
 * @param steps number of steps or stairs
 * @param stepHeightM height of the tallest step or kerb, metres
 */
public record LaunchSite(
        String name,
        @Nullable Double distanceM,
        @Nullable String surface,
        @Nullable Double gradePercent,
        @Nullable Integer steps,
        @Nullable Double stepHeightM) {}
