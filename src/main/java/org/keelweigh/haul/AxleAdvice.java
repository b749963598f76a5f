package org.keelweigh.haul;

/**
 * Where to set the axle.
 *
 * @param stationM recommended place, metres from the stern
 * @param foremostM from here the hand load is at its least comfortable value on some stretch
 * @param rearmostM from here it is at its greatest comfortable value on some stretch
 * @param comfortable whether the recommended place keeps the hand load comfortable on every stretch, both ways
 * @param leastHandN the least hand load at the recommended place over all stretches, newtons
 * @param mostHandN the greatest hand load there, newtons
 */
public record AxleAdvice(
        double stationM,
        double foremostM,
        double rearmostM,
        boolean comfortable,
        double leastHandN,
        double mostHandN) {}
