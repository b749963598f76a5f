package org.keelweigh.haul;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.CatalogueException;

class HaulCatalogueTests {

    @TempDir
    Path shop;

    private Catalogue shopWith(String file, UnaryOperator<String> change) throws IOException {
        try (var shipped = HaulCatalogueTests.class.getResourceAsStream("/catalogue/" + file)) {
            String text = new String(shipped.readAllBytes(), StandardCharsets.UTF_8);
            String changed = change.apply(text);
            assertThat(changed).isNotEqualTo(text);
            Files.writeString(shop.resolve(file), changed);
        }
        return Catalogue.withShopFolder(shop);
    }

    @Test
    void holdsACartForEveryKindOfBoat() {
        HaulCatalogue catalogue = HaulCatalogue.read(Catalogue.shipped());
        for (BoatKind kind : BoatKind.values()) {
            assertThat(catalogue.carts()).anyMatch(cart -> cart.fits().contains(kind));
        }
    }

    @Test
    void rollsHarderOnSofterGroundAndEasierOnWiderTyres() {
        HaulCatalogue catalogue = HaulCatalogue.read(Catalogue.shipped());
        Surface sand = catalogue.surface("soft-dry-sand");
        assertThat(sand.rollingOn(TyreClass.BALLOON).orElseThrow().likely())
                .isLessThan(sand.rollingOn(TyreClass.AIR).orElseThrow().likely());
        assertThat(sand.rollingOn(TyreClass.AIR).orElseThrow().likely())
                .isLessThan(sand.rollingOn(TyreClass.SOLID).orElseThrow().likely());
        assertThat(catalogue.surface("stairs").rollingOn(TyreClass.AIR)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "surfaces.csv,'0.02,0.03,0.04,0.015','0.05,0.03,0.04,0.015'",
        "surfaces.csv,'0.02,0.03,0.04,0.015','x,0.03,0.04,0.015'",
        "surfaces.csv,'1.3,1.5,estimate','0.3,1.5,estimate'",
        "surfaces.csv,'packed-trail,packed','asphalt,packed'",
        "surfaces.csv,'stairs,stairs,,,,','stairs,stairs,0.1,0.1,0.1,'",
        "carts.csv,'cradle,solid','glue,solid'",
        "carts.csv,'cradle,solid','cradle,square'",
        "carts.csv,'stairs soft-dry-sand mud','stairs lava'",
        "carts.csv,'sot sink pedal','sot barge pedal'",
        "carts.csv,'50,65,80','80,65,50'"
    })
    void namesFileAndLineOfWhatIsWrong(String file, String good, String bad) throws IOException {
        Catalogue broken = shopWith(file, text -> text.replaceFirst(good, bad));
        assertThatThrownBy(() -> HaulCatalogue.read(broken))
                .isInstanceOf(CatalogueException.class)
                .hasMessageContaining(file + ", line ");
    }

    @ParameterizedTest
    @CsvSource({"'0.43,20,13,8','0.43,0,13,8'", "'0.43,20,13,8','0.20,20,13,8'"})
    void rejectsUnusableLiftLimits(String good, String bad) throws IOException {
        Catalogue broken = shopWith("lift-limits.csv", text -> text.replace(good, bad));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LiftLimits.read(broken))
                .withMessageContaining("lift-limits.csv");
    }

    @Test
    void namesTheCartsThereAre() {
        HaulCatalogue catalogue = HaulCatalogue.read(Catalogue.shipped());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> catalogue.cart("hovercraft"))
                .withMessageContaining("balloon");
    }
}
