package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;

/**
 * Findings sorted to the checks they belong to: at most one counts for each check that applies to the boat.
 *
 * <p>Where two findings are about one check, the better look counts; of equally good looks the worse outcome; then the
 * dearer quote. So the order in which findings come in changes nothing.
 *
 * @param applicable the checks that apply and whose part is fitted, in zone order
 * @param notFitted the checks whose part was found not to be fitted
 * @param found the counting findings by check id
 * @param ignored the findings that do not count, each with a sentence
 */
public record Inspection(
        List<Check> applicable, List<Check> notFitted, Map<String, Finding> found, List<IgnoredFinding> ignored) {

    private static final Comparator<IgnoredFinding> BY_CHECK = Comparator.comparing(
                    (IgnoredFinding each) -> each.finding().check())
            .thenComparing(IgnoredFinding::why)
            .thenComparing(each -> each.finding().toString());

    public Inspection {
        applicable = List.copyOf(applicable);
        notFitted = List.copyOf(notFitted);
        found = Map.copyOf(found);
        ignored = List.copyOf(ignored);
    }

    /** Sorts {@code findings} to the checks of {@code catalogue} that apply to {@code boat}. */
    public static Inspection of(InspectionCatalogue catalogue, Boat boat, List<Finding> findings) {
        List<Check> all = catalogue.applicable(boat);
        Map<String, Check> byId = new HashMap<>();
        all.forEach(check -> byId.put(check.id(), check));
        List<IgnoredFinding> ignored = new ArrayList<>();
        Map<String, Finding> found = new HashMap<>();
        for (Finding finding :
                findings.stream().sorted(bestFirst(catalogue, byId)).toList()) {
            Optional<String> objection = objection(catalogue, boat, byId, finding);
            if (objection.isPresent()) {
                ignored.add(new IgnoredFinding(finding, objection.get()));
            } else if (found.putIfAbsent(finding.check(), finding) != null) {
                ignored.add(new IgnoredFinding(
                        finding,
                        "Another finding on \"" + byId.get(finding.check()).title() + "\" counts instead."));
            }
        }
        ignored.sort(BY_CHECK);
        List<Check> notFitted =
                all.stream().filter(check -> isNotFitted(found.get(check.id()))).toList();
        List<Check> fitted =
                all.stream().filter(check -> !notFitted.contains(check)).toList();
        notFitted.forEach(check -> found.remove(check.id()));
        return new Inspection(fitted, notFitted, found, ignored);
    }

    private static boolean isNotFitted(@Nullable Finding finding) {
        return finding != null && finding.outcome() == Outcome.NOT_FITTED;
    }

    private static Comparator<Finding> bestFirst(InspectionCatalogue catalogue, Map<String, Check> byId) {
        return Comparator.comparingDouble((Finding each) -> -sensitivity(catalogue, byId, each))
                .thenComparing(Finding::outcome, Comparator.reverseOrder())
                .thenComparingDouble(
                        each -> each.quote() == null ? 0 : -each.quote().likely())
                .thenComparing(Finding::toString);
    }

    private static double sensitivity(InspectionCatalogue catalogue, Map<String, Check> byId, Finding finding) {
        Check check = byId.get(finding.check());
        return check == null ? 0 : catalogue.sensitivity(check, finding.method());
    }

    private static Optional<String> objection(
            InspectionCatalogue catalogue, Boat boat, Map<String, Check> byId, Finding finding) {
        Optional<Check> known = catalogue.check(finding.check());
        if (known.isEmpty()) {
            return Optional.of("There is no check named \"" + finding.check() + "\" in the catalogue.");
        }
        Check check = byId.get(finding.check());
        String title = known.get().title();
        if (check == null) {
            return Optional.of("\"" + title + "\" does not apply to a "
                    + boat.kind().label() + " of " + boat.material().label() + " with "
                    + boat.drive().label() + ".");
        }
        boolean fault = finding.outcome() != Outcome.FINE && finding.outcome() != Outcome.NOT_FITTED;
        if (fault && check.gradeUpTo(finding.outcome()).isEmpty()) {
            return Optional.of("\"" + title + "\" cannot come out "
                    + finding.outcome().label() + " on a " + boat.kind().label() + ".");
        }
        return Optional.empty();
    }

    /** Finds what came out of {@code check}, if it was made. */
    public Optional<Finding> finding(Check check) {
        return Optional.ofNullable(found.get(check.id()));
    }

    /** Tells the checks not made yet, in zone order. */
    public List<Check> unmade() {
        return applicable.stream()
                .filter(check -> !found.containsKey(check.id()))
                .toList();
    }

    /** Tells the faults found, in zone order, each as the grade that counts. */
    public List<FoundFault> faults() {
        List<FoundFault> faults = new ArrayList<>();
        for (Check check : applicable) {
            finding(check)
                    .flatMap(finding ->
                            check.gradeUpTo(finding.outcome()).map(grade -> new FoundFault(check, grade, finding)))
                    .ifPresent(faults::add);
        }
        return List.copyOf(faults);
    }
}
