package org.keelweigh.boat.identity;

import java.time.Year;
import java.util.List;
import java.util.Optional;

/** What came of reading the characters of a hull identification number. */
public sealed interface HullNumberReading {

    /** What was changed before reading, a sentence each: capitals, blanks, hyphens. Empty if nothing was. */
    List<String> normalised();

    /** Other readings that would fit better, best first. */
    List<Suggestion> suggestions();

    /**
     * The format fits. It is not thereby genuine.
     *
     * @param number the parts
     * @param normalised what was changed before reading
     * @param observations what is worth telling, gravest first
     * @param suggestions other readings, only where an observation is {@link Observation.Weight#IMPOSSIBLE}
     */
    record WellFormed(
            HullNumber number, List<String> normalised, List<Observation> observations, List<Suggestion> suggestions)
            implements HullNumberReading {
        /** Copies the lists. */
        public WellFormed {
            normalised = List.copyOf(normalised);
            observations = List.copyOf(observations);
            suggestions = List.copyOf(suggestions);
        }

        /** Tells whether an observation cannot be true of a real boat. */
        public boolean impossible() {
            return observations.stream().anyMatch(each -> each.weight() == Observation.Weight.IMPOSSIBLE);
        }
    }

    /**
     * The format does not fit.
     *
     * @param cleaned the characters that were judged, without country; empty if far too long to show
     * @param position the first wrong character of {@code cleaned}, counted from 1; one past the end if too short
     * @param sentence what is wrong, in plain words
     * @param normalised what was changed before reading
     * @param suggestions readings that would fit
     */
    record Malformed(
            String cleaned, int position, String sentence, List<String> normalised, List<Suggestion> suggestions)
            implements HullNumberReading {
        /** Copies the lists. */
        public Malformed {
            normalised = List.copyOf(normalised);
            suggestions = List.copyOf(suggestions);
        }
    }

    /**
     * Reads a hull number as somebody typed it.
     *
     * @param typed any text
     * @param today the current year, against which dates in the future are judged
     * @return the parts, or the first character that is wrong
     */
    static HullNumberReading of(String typed, Year today) {
        Cleaned cleaned = Cleaned.of(typed);
        String twelve = cleaned.twelve();
        if (twelve.length() != Layout.LENGTH) {
            return wrongLength(cleaned);
        }
        Layout layout = Layout.of(twelve);
        int place = layout.firstBreak(twelve, HullNumber.digitsInMaker(cleaned.country()));
        if (place >= 0) {
            return new Malformed(
                    twelve,
                    place + 1,
                    layout.complaint(twelve, place),
                    cleaned.told(),
                    LookAlikes.readings(cleaned.country(), twelve, today));
        }
        HullNumber number = HullNumber.of(cleaned.country(), twelve);
        WellFormed reading = new WellFormed(number, cleaned.told(), DateChecks.of(number, today), List.of());
        return reading.impossible()
                ? new WellFormed(
                        number, reading.normalised(), reading.observations(), LookAlikes.possibleInstead(number, today))
                : reading;
    }

    private static Malformed wrongLength(Cleaned cleaned) {
        String found = cleaned.twelve();
        if (found.length() > Cleaned.LONGEST_SHOWN) {
            return new Malformed(
                    "",
                    Layout.LENGTH + 1,
                    "The text is far too long for a hull number, which has 12 characters, or 14 with the country.",
                    cleaned.told(),
                    List.of());
        }
        int position = Math.min(found.length(), Layout.LENGTH) + 1;
        Optional<String> country = cleaned.country();
        String counted = country.isPresent() ? " characters after the country letters " + country.get() : " characters";
        return new Malformed(
                found,
                position,
                "There are " + found.length() + counted
                        + "; a hull number has 12, or 14 with two country letters in front.",
                cleaned.told(),
                List.of());
    }
}
