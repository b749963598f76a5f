package org.keelweigh.appraisal;

import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.HiddenCauses;
import org.keelweigh.condition.InspectionCatalogue;
import org.keelweigh.condition.ListingCatalogue;
import org.keelweigh.cost.Depreciation;
import org.keelweigh.cost.Negotiation;
import org.keelweigh.cost.PriceBook;
import org.keelweigh.fit.FitCatalogue;
import org.keelweigh.haul.HaulCatalogue;
import org.keelweigh.haul.LiftLimits;

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
}
