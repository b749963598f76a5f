package org.keelweigh.exchange;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import org.keelweigh.appraisal.Rule;
import org.keelweigh.appraisal.Trust;
import org.keelweigh.boat.identity.PlateState;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Finding;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.LaunchSite;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.ShortlistData;

/**
 * The names that the catalogues define and documents refer to. A name from a shop's own or a later catalogue is kept and
 * asked about; it counts for nothing until a catalogue knows it.
 *
 * @param criteria what a boat is judged by
 */
record KnownNames(
        Set<String> criteria,
        Set<String> weightSets,
        Set<String> checks,
        Set<String> signals,
        Set<String> gear,
        Set<String> surfaces,
        Set<String> carts) {

    private static final List<String> PLATE_STATES =
            Arrays.stream(PlateState.values()).map(Trust::code).toList();
    private static final List<String> RULES =
            Arrays.stream(Rule.values()).map(Rule::code).toList();

    static KnownNames read(Catalogue catalogue) {
        Set<String> signals = new LinkedHashSet<>(names(catalogue, "signals.csv", "signal"));
        signals.addAll(names(catalogue, "listing-signals.csv", "signal"));
        return new KnownNames(
                names(catalogue, "criteria.csv", "id"),
                names(catalogue, "weight-sets.csv", "set"),
                names(catalogue, "checks.csv", "check"),
                signals,
                names(catalogue, "price-book.csv", "id"),
                names(catalogue, "surfaces.csv", "surface"),
                names(catalogue, "carts.csv", "cart"));
    }

    /** Asks about the names in a trip that no catalogue has; {@code ask} takes the field and the question. */
    void askAbout(ShortlistData data, BiConsumer<String, String> ask) {
        int launch = 0;
        for (LaunchSite site : data.trip().launches()) {
            if (site.surface() != null) {
                ask("trip.launches[" + launch + "].surface", "surface", site.surface(), surfaces, ask);
            }
            launch++;
        }
        if (data.trip().cart().type() != null) {
            ask("trip.cart.type", "cart", data.trip().cart().type(), carts, ask);
        }
    }

    /** Asks about a weight set that no catalogue has. */
    void askAbout(PersonData data, BiConsumer<String, String> ask) {
        if (data.weightSet() != null) {
            ask("weightSet", "weight set", data.weightSet(), weightSets, ask);
        }
    }

    /** Asks about the names on a boat that no catalogue has. */
    void askAbout(CandidateData data, BiConsumer<String, String> ask) {
        int place = 0;
        for (Finding finding : data.findings()) {
            ask("findings[" + place + "].check", "check", finding.check(), checks, ask);
            place++;
        }
        if (data.plate().state() != null) {
            ask("plate.state", "state of a hull number", data.plate().state(), PLATE_STATES, ask);
        }
        data.liftedRulings().keySet().forEach(id -> ask("liftedRulings." + id, "deal-breaker", id, RULES, ask));
        data.listing().signals().keySet().forEach(id -> ask("listing.signals." + id, "sign", id, signals, ask));
        data.listing().included().keySet().forEach(id -> ask("listing.included." + id, "piece of gear", id, gear, ask));
    }

    private static void ask(
            String field, String what, String name, Collection<String> known, BiConsumer<String, String> ask) {
        if (!known.contains(name)) {
            ask.accept(
                    field,
                    "Nothing here knows a " + what + " named \"" + Words.brief(name)
                            + "\"; it is kept but counts for nothing."
                            + NearestName.hint(Words.brief(name), known));
        }
    }

    private static Set<String> names(Catalogue catalogue, String table, String column) {
        Set<String> names = new LinkedHashSet<>();
        catalogue.table(table).rows().forEach(row -> names.add(row.text(column)));
        return names;
    }
}
