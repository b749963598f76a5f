package org.keelweigh.appraisal;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.CauseSignal;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.HiddenCauses;
import org.keelweigh.condition.InspectionCatalogue;
import org.keelweigh.condition.ListingCatalogue;
import org.keelweigh.condition.ListingSignal;
import org.keelweigh.cost.Depreciation;
import org.keelweigh.cost.Negotiation;
import org.keelweigh.cost.PriceBook;
import org.keelweigh.fit.FitCatalogue;
import org.keelweigh.haul.CartType;
import org.keelweigh.haul.HaulCatalogue;
import org.keelweigh.haul.LiftLimits;
import org.keelweigh.haul.Surface;

/**
 * All catalogues, read once and checked.
 *
 * @param defaults usual boats
 * @param inspection checks and graded findings
 * @param causes hidden causes with their signals and effects
 * @param listing signs about listing and seller
 * @param prices the price book
 * @param depreciation how boats lose value
 * @param negotiation how asking prices become paid prices
 * @param haul carts and surfaces
 * @param lift guide values for lifting
 * @param fit rows and tables of fit
 * @param yardsticks criteria and weight sets
 */
public record Catalogues(
        BoatDefaults defaults,
        InspectionCatalogue inspection,
        HiddenCauses causes,
        ListingCatalogue listing,
        PriceBook prices,
        Depreciation depreciation,
        Negotiation negotiation,
        HaulCatalogue haul,
        LiftLimits lift,
        FitCatalogue fit,
        Yardsticks yardsticks) {

    /**
     * Reads every table.
     *
     * @throws org.keelweigh.catalogue.CatalogueException naming file and line, if one is unusable
     */
    public static Catalogues read(Catalogue source) {
        InspectionCatalogue inspection = InspectionCatalogue.read(source);
        return new Catalogues(
                BoatDefaults.read(source),
                inspection,
                HiddenCauses.read(source, inspection),
                ListingCatalogue.read(source),
                PriceBook.read(source),
                Depreciation.read(source),
                Negotiation.read(source),
                HaulCatalogue.read(source),
                LiftLimits.read(source),
                FitCatalogue.read(source),
                Yardsticks.read(source));
    }

    /** Finds the words for an id of any table that documents name things by; empty if none has it. */
    public Optional<String> words(String id) {
        return inspection
                .check(id)
                .map(Check::title)
                .or(() -> listing.signal(id).map(ListingSignal::phrase))
                .or(() -> causes.signal(id).map(CauseSignal::phrase))
                .or(() -> first(haul.carts(), CartType::code, CartType::label, id))
                .or(() -> first(haul.surfaces(), Surface::code, Surface::label, id))
                .or(() -> yardsticks.name(id))
                .or(() -> first(yardsticks.weightSets(), WeightSet::id, WeightSet::name, id));
    }

    private static <T> Optional<String> first(
            List<T> all, Function<T, String> code, Function<T, String> words, String id) {
        return all.stream()
                .filter(each -> code.apply(each).equals(id))
                .findFirst()
                .map(words);
    }
}
