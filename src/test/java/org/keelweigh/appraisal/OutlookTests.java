package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;

class OutlookTests {

    private static final Catalogues CATALOGUES = Catalogues.read(Catalogue.shipped());
    private static final Measured MEASURED = new Appraiser(CATALOGUES)
            .measure(
                    AppraiserTests.facts(
                            AppraiserTests.priced("Pedal", BoatKind.PEDAL_KAYAK, 980)
                                    .withFinding(Finding.of("hull-uv", Outcome.MINOR)),
                            AppraiserTests.priced("Sit-on", BoatKind.SIT_ON_TOP, 640),
                            AppraiserTests.priced("Blow-up", BoatKind.INFLATABLE_KAYAK, 520)),
                    2026);
    private static final Perspective PERSPECTIVE = MEASURED.perspectives().getFirst();
    private static final Outlook OUTLOOK = Outlook.of(MEASURED);

    @Test
    void sharesTheFirstPlaceAmongTheBoats() {
        long t0 = System.nanoTime();
        Confidence confidence = OUTLOOK.confidence(PERSPECTIVE);
        long t1 = System.nanoTime();
        OUTLOOK.confidence(PERSPECTIVE);
        System.out.println("confidence " + (t1 - t0) / 1e6 + " then " + (System.nanoTime() - t1) / 1e6);
        double sum = 0;
        for (int b = 0; b < 3; b++) {
            System.out.println(confidence.chanceBest(b) + " ± " + confidence.chanceBestError(b));
            sum += confidence.chanceBest(b);
        }
        assertThat(sum).isBetween(1 - 1e-9, 1 + 1e-3);
    }

    @Test
    void keepsTheLawsOfInformation() {
        long t0 = System.nanoTime();
        NextChecks checks = CheckAdvisor.advise(CATALOGUES, OUTLOOK, PERSPECTIVE);
        System.out.println("advise " + (System.nanoTime() - t0) / 1e6);
        t0 = System.nanoTime();
        checks = CheckAdvisor.advise(CATALOGUES, OUTLOOK, PERSPECTIVE);
        System.out.println("advise again " + (System.nanoTime() - t0) / 1e6);
        System.out.println(checks.sentence() + " " + checks.perfect());
        checks.outlooks().stream().limit(6).forEach(o -> System.out.println(o.boat() + " " + o.check().id() + " " + o.gain() + " ± " + o.gainError() + " " + o.changeChance() + " " + o.minutes()));
        assertThat(checks.outlooks()).allMatch(each -> each.gain() >= 0);
    }

    @Test
    void offersLessThanAskingForABoatThatTrails() {
        long t0 = System.nanoTime();
        List<BoatOffer> offers = Offers.of(OUTLOOK, PERSPECTIVE, CATALOGUES);
        System.out.println("offers " + (System.nanoTime() - t0) / 1e6);
        t0 = System.nanoTime();
        offers = Offers.of(OUTLOOK, PERSPECTIVE, CATALOGUES);
        System.out.println("offers again " + (System.nanoTime() - t0) / 1e6);
        offers.forEach(o -> System.out.println(o.toString().substring(0, Math.min(700, o.toString().length()))));
        assertThat(offers).hasSize(3);
    }
}
