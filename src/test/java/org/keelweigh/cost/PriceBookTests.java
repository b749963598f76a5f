package org.keelweigh.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.CatalogueException;
import org.keelweigh.quantity.Estimate;

class PriceBookTests {

    private static final String HEADING = "id,name,group,rule,every_least,every_most,min_per_year,first,low,likely,"
            + "high,unit,when,shared,note,source\n";
    private static final PriceBook SHIPPED = PriceBook.read(Catalogue.shipped());

    /** Service every 40 to 75 days of use; a throw-away paddle costs about 30: common practice, no source. */
    @Test
    void carriesTheTradesFigures() {
        PriceItem service = SHIPPED.item("drive-service-prop").orElseThrow();
        assertThat(service.everyLeast()).isEqualTo(40);
        assertThat(service.everyMost()).isEqualTo(75);
        assertThat(service.why()).contains("salt", "fresh water", "no source");
        assertThat(SHIPPED.item("paddle-throwaway").orElseThrow().each().likely())
                .isEqualTo(30);
    }

    @Test
    void hasAnItemForEveryNeed() {
        Set<Need> priced = EnumSet.noneOf(Need.class);
        SHIPPED.items().forEach(each -> priced.add(each.when()));
        assertThat(priced).containsExactlyInAnyOrder(Need.values());
    }

    @Test
    void scalesMoneyButNotPercentages() {
        PriceBook tenfold = SHIPPED.inCurrency(10);
        assertThat(tenfold.item("vest").orElseThrow().each()).isEqualTo(new Estimate(500, 1000, 2200));
        assertThat(tenfold.item("sales-tax").orElseThrow().each()).isEqualTo(new Estimate(0, 6, 10));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "vest,vest,ready,once,,,,,50,20,220,money,missing-vest,yes,,estimate | low over likely",
                "vest,vest,ready,sometimes,,,,,50,100,220,money,missing-vest,yes,,estimate | sometimes",
                "vest,vest,ready,once,,,,,50,100,220,money,missing-hat,yes,,estimate | missing-hat",
                "vest,vest,ready,once,,,,,50,100,220,money,missing-vest,maybe,,estimate | maybe",
                "vest,vest,ready,once,,,,,50,100,220,money,missing-vest,yes,, | source",
                "vest,vest,ready,every-n-years,,,,,50,100,220,money,always,yes,,estimate | interval",
                "tax,tax,ready,year,,,,,5,6,7,percent-of-price,always,yes,,estimate | percentage of the price"
            })
    void tellsFileAndLineOfABrokenItem(String line, String complaint, @TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("price-book.csv"), HEADING + line + "\n");
        assertThatThrownBy(() -> PriceBook.read(Catalogue.withShopFolder(folder)))
                .isInstanceOf(CatalogueException.class)
                .hasMessageContaining("price-book.csv, line 2")
                .hasMessageContaining(complaint);
    }

    @Test
    void refusesTheSameItemTwice() {
        PriceItem vest = SHIPPED.item("vest").orElseThrow();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PriceBook(List.of(vest, vest)))
                .withMessageContaining("vest");
    }
}
