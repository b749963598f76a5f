package org.keelweigh.exchange;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that somebody who mistyped may have meant. */
final class NearestName {

    private NearestName() {}

    /** Finds the known name with the fewest letters to change; empty when all are far off. */
    static Optional<String> of(String typed, Collection<String> known) {
        int most = Math.max(2, typed.length() / 3);
        return known.stream()
                .filter(name -> Math.abs(name.length() - typed.length()) <= most)
                .filter(name -> distance(typed, name) <= most)
                .min(Comparator.comparingInt((String name) -> distance(typed, name))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** Tells it as a sentence that can follow another; empty when all are far off. */
    static String hint(String typed, Collection<String> known) {
        return of(typed, known).map(name -> " Did you mean \"" + name + "\"?").orElse("");
    }

    /** Counts the letters to put in, take out or change (Levenshtein's distance), upper and lower case alike. */
    private static int distance(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
