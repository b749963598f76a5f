package org.keelweigh.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.SellerQuestion;
import org.keelweigh.picture.SamplePictures;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Photo;
import org.keelweigh.shortlist.PhotoId;
import org.keelweigh.shortlist.PlateFacts;
import org.keelweigh.shortlist.UnitSystem;
import org.keelweigh.shortlist.VisitNotes;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:papers")
class PapersTests {

    private static final String SCRIPT = "<script>alert('x')</script>";
    private static final Instant NOW = Instant.parse("2026-04-01T12:30:00Z");

    @Autowired
    AppraisalService appraisal;

    @Test
    void recordsWhenWhereWhoAndWhat() throws IOException {
        String page = VisitRecord.of(proof());

        assertThat(page).contains("2026-04-01 10:15", "Łódź – Old boathouse", "may be stolen", "Photo by the stern");
        assertThat(page).contains("data:image/jpeg;base64,");
        assertThat(read(page, PaperPdf.Paper.A4))
                .contains("Łódź – Old boathouse", "2026-04-01 10:15", "Read the hull number", "moving house");
    }

    @Test
    void draftsABillWithFaultsNumberAndBlanks() throws IOException {
        String text = read(BillOfSale.of(proof()), PaperPdf.Paper.A4);

        assertThat(text)
                .contains("ZZQ4K7M2C122", "€820", "paddle, cart", "Seller's signature", "Hull identification number");
        assertThat(text.replaceAll("\\s+", " "))
                .contains("is decided by the law of the place", "Read the hull number – stop");
    }

    @Test
    void writesWhatPeopleTypedAsTextOnly() {
        assertThat(VisitRecord.of(proof())).doesNotContain("<script").contains("&lt;script&gt;");
        assertThat(BillOfSale.of(proof())).doesNotContain("<script").contains("&lt;script&gt;");
    }

    @ParameterizedTest
    @EnumSource(PaperPdf.Paper.class)
    void printsOnBothPapers(PaperPdf.Paper paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(PaperPdf.of(BillOfSale.of(proof()), paper))) {
            float width = document.getPage(0).getMediaBox().getWidth();
            assertThat(width).isCloseTo(paper == PaperPdf.Paper.A4 ? 595.3f : 612f, Offset.offset(1f));
        }
    }

    private static String read(String page, PaperPdf.Paper paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(PaperPdf.of(page, paper))) {
            return new PDFTextStripper().getText(document);
        }
    }

    private VisitProof proof() {
        Finding stop = new Finding("hin-read", Outcome.STOP, Method.TOUCHED, null, SCRIPT + "{{boat}}\u0001", null);
        Candidate bare = FieldCases.boat(0, stop, Finding.of("hull-uv", Outcome.FINE));
        CandidateData data = bare.data().withPlate(new PlateFacts("read", "ZZQ4K7M2C122"));
        Candidate boat = new Candidate(bare.id(), bare.shortlist(), 0, data);
        BoatReport report = appraisal.measure(FieldCases.facts(boat)).boats().getFirst();
        VisitNotes notes = new VisitNotes(
                Instant.parse("2026-04-01T10:15:30Z"),
                45,
                "Łódź – Old boathouse",
                "Wren & Alder",
                "Finch " + SCRIPT,
                null,
                "paddle, cart",
                820.0,
                new TreeMap<>(Map.of("why-selling", "moving house")),
                null,
                null,
                List.of());
        Photo photo = new Photo(PhotoId.fresh(), boat.id(), null, "Photo by the stern", NOW, 40, 30, "image/jpeg", 9);
        return new VisitProof(
                report,
                notes,
                FieldCases.checks(boat),
                List.of(new SellerQuestion("why-selling", "Why are you selling it?", "a story", null, "")),
                List.of(photo),
                id -> Optional.of(SamplePictures.of("jpeg", 40, 30)),
                new Display(UnitSystem.METRIC, "EUR"),
                NOW,
                ZoneOffset.UTC);
    }
}
