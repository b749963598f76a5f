package org.keelweigh.listing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ListingTextTests {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12'6\" kayak|3.81",
                "12\u20196\u201D kayak|3.81",
                "12ft 6in kayak|3.81",
                "12 ft. 6 in. kayak|3.81",
                "12-6 is not a length but 12'-6\" is|3.81",
                "12.5 ft kayak|3.81",
                "12,5 ft kayak|3.81",
                "3,81 m kayak|3.81",
                "3.81m kayak|3.81",
                "381 cm kayak|3.81",
                "3810 mm kayak|3.81",
                "3,810 mm kayak|3.81",
                "3.810 mm kayak|3.81",
                "3.810 m kayak|3.81",
                "12 foot 6, kayak|3.81",
                "twelve and a half foot kayak|3.81",
                "\uFF13.8\uFF11 m kayak|3.81"
            })
    void readsLengthsInManyWritings(String text, double metres) {
        assertThat(amount(text, Fact.LENGTH_M))
                .hasValueSatisfying(value -> assertThat(value).isCloseTo(metres, within(0.002)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "$950|950|USD",
                "950 USD|950|USD",
                "€1.200,-|1200|EUR",
                "1.200,50 €|1200.5|EUR",
                "£800 ono|800|GBP",
                "CHF 2'800|2800|CHF",
                "1 200 €|1200|EUR",
                "$1,250.00|1250|USD",
                "AU$350|350|AUD",
                "1.5k EUR|1500|EUR",
                "450 quid|450|GBP"
            })
    void readsPricesInManyWritings(String text, double amount, String currency) {
        assertThat(amount("Kayak. " + text, Fact.ASKING_PRICE)).contains(amount);
        assertThat(text("Kayak. " + text, Fact.CURRENCY)).contains(currency);
    }

    @Test
    void tellsTheAskingPriceFromThePriceWhenNew() {
        String listing = "asking 900 obo, paid 2,400 new";
        assertThat(amount(listing, Fact.ASKING_PRICE)).contains(900.0);
        assertThat(amount(listing, Fact.PRICE_NEW)).contains(2400.0);
        assertThat(amount("cost 1.5k new", Fact.PRICE_NEW)).contains(1500.0);
        assertThat(amount("like new, $500", Fact.PRICE_NEW)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "$100 deposit holds it",
                "delivery £40",
                "call 555 0142",
                "built 2019",
                "serial 4471",
                "10 miles away"
            })
    void takesNoPriceFromOtherNumbers(String text) {
        assertThat(amount(text, Fact.ASKING_PRICE)).isEmpty();
    }

    @Test
    void tellsWhatItWeighsFromWhatItCarries() {
        String listing = "Weight capacity 350 lb. Weight 68 lb.";
        assertThat(amount(listing, Fact.RATED_LOAD_KG))
                .hasValueSatisfying(kg -> assertThat(kg).isCloseTo(350 * 0.45359237, within(1e-9)));
        assertThat(amount(listing, Fact.HULL_MASS_KG))
                .hasValueSatisfying(kg -> assertThat(kg).isCloseTo(68 * 0.45359237, within(1e-9)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "no paddle",
                "No paddle, cart or vest.",
                "without cart",
                "paddle not included",
                "paddles well",
                "paddle board",
                "cart sold separately",
                "needs a new seat",
                "paddle and cart not included",
                "does not come with a paddle"
            })
    void includesNoGearThatIsDeniedOrOnlySoundsLikeIt(String text) {
        assertThat(ListingText.read(text)).noneMatch(each -> each.fact() == Fact.INCLUDED_GEAR);
    }

    @Test
    void includesGearAfterATurnOfPhrase() {
        assertThat(ListingText.read("No cart but comes with a paddle, vest and pump."))
                .filteredOn(each -> each.fact() == Fact.INCLUDED_GEAR)
                .extracting(each -> each.text().orElseThrow())
                .containsExactlyInAnyOrder("paddle", "vest", "pump");
    }

    @Test
    void tellsAmbiguitiesInTheNote() {
        assertThat(proposal("kayak 3.810 mm long", Fact.LENGTH_M).note()).contains("thousands or decimals");
        assertThat(proposal("sit on top, 30 kg", Fact.HULL_MASS_KG).note()).contains("Not labelled");
        assertThat(proposal("€1.200,-", Fact.ASKING_PRICE).note()).contains("thousands");
        assertThat(proposal("$500", Fact.CURRENCY).note()).contains("Canadian");
        assertThat(proposal("bought in 2018", Fact.MODEL_YEAR).note()).contains("earlier");
        assertThat(proposal("11'6 x 31 board", Fact.BEAM_M).note()).contains("no unit");
        assertThat(proposal("paddleboard", Fact.KIND).note()).contains("rigid");
        assertThat(proposal("holds paddlers up to 250 lbs", Fact.RATED_LOAD_KG).note())
                .contains("paddler");
    }

    @Test
    void keepsPlacesInTheText() {
        String listing = "\u0000\tSit-on-top\u00a0kayak \uD83D\uDEF6 12\u20326\u2033,\r\n68 lbs \u2013 \u00A3450 ono";
        List<Proposal> proposals = ListingText.read(listing);
        assertThat(proposals)
                .extracting(Proposal::fact)
                .contains(Fact.LENGTH_M, Fact.HULL_MASS_KG, Fact.ASKING_PRICE, Fact.KIND);
        assertThat(proposals).allSatisfy(each -> assertThat(listing.substring(each.start(), each.end()))
                .isEqualTo(each.words()));
    }

    @Test
    void findsTheHullNumberWithAndWithoutLabel() {
        assertThat(text("HIN: US-ABC12345G909", Fact.HULL_NUMBER)).contains("US-ABC12345G909");
        assertThat(text("number abc12345g909 on the stern", Fact.HULL_NUMBER)).contains("ABC12345G909");
        assertThat(text("international shipping", Fact.HULL_NUMBER)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1",
                "1,",
                "1.1",
                "9'",
                "12ft ",
                "12 x ",
                "$",
                "$1 ",
                "no ",
                "no, ",
                "paddle ",
                "paddle, no ",
                "a",
                " ",
                "\n",
                "-",
                "1 000 ",
                "12 1/2 ",
                "A",
                "Aa ",
                "located in A",
                "near Aa ",
                "sit on ",
                "inflatable ",
                "68 lbs ",
                "max ",
                "new ",
                "2019 ",
                "my ",
                "abc12345",
                "\u0000",
                "\uD83D\uDEF6",
                "\uD83D",
                "''",
                "x",
                "built "
            })
    void readsHugeRepeatedTextWithBoundedWork(String piece) {
        String listing = piece.repeat(200_000 / piece.length());
        List<Proposal> proposals = ListingText.read(listing);
        // every fact once, gear once per item: the answer does not grow with the text
        assertThat(proposals).hasSizeLessThanOrEqualTo(30);
        assertThat(proposals).allSatisfy(each -> assertThat(each.end()).isLessThanOrEqualTo(ListingText.LONGEST_READ));
    }

    @Test
    void readsNothingBeyondItsLimit() {
        assertThat(ListingText.read(" ".repeat(ListingText.LONGEST_READ) + "12 ft kayak $500"))
                .isEmpty();
        assertThat(ListingText.read("")).isEmpty();
    }

    @Property(seed = "21", tries = 300)
    void neverFailsAndKeepsItsPlaces(@ForAll @StringLength(max = 400) String text) {
        assertThat(ListingText.read(text)).allSatisfy(each -> assertThat(text.substring(each.start(), each.end()))
                .isEqualTo(each.words()));
    }

    private static Proposal proposal(String listing, Fact fact) {
        return ListingText.read(listing).stream()
                .filter(each -> each.fact() == fact)
                .findFirst()
                .orElseThrow();
    }

    private static Optional<Double> amount(String listing, Fact fact) {
        return ListingText.read(listing).stream()
                .filter(each -> each.fact() == fact)
                .findFirst()
                .map(each -> each.amount().orElseThrow());
    }

    private static Optional<String> text(String listing, Fact fact) {
        return ListingText.read(listing).stream()
                .filter(each -> each.fact() == fact)
                .findFirst()
                .flatMap(Proposal::text);
    }
}
