package org.keelweigh.appraisal;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.keelweigh.boat.Boat;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.InspectionCatalogue;
import org.keelweigh.condition.SellerQuestion;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/** What to do, to ask and to bring on a visit to a boat. */
@Service
public class VisitGuide {

    /** Named in the catalogue's tools, but nobody has to pack them. */
    private static final Set<String> ALWAYS_THERE = Set.of(
            "hands", "eyes", "finger", "fingers", "fingernail", "nail", "thumb", "none", "list", "fin", "battery");

    private final InspectionCatalogue inspection;
    private final List<SellerQuestion> questions;

    VisitGuide(AppraisalService appraisal, @Value("${keelweigh.catalogue-folder:}") String shopFolder) {
        Catalogue source = shopFolder.isBlank() ? Catalogue.shipped() : Catalogue.withShopFolder(Path.of(shopFolder));
        this.inspection = appraisal.catalogues().inspection();
        this.questions = SellerQuestion.read(source);
    }

    /** Tells the checks that apply to a boat, in zone order. */
    public List<Check> checks(Boat boat) {
        return inspection.applicable(boat);
    }

    /** Tells the questions to ask the seller of a boat. */
    public List<SellerQuestion> questions(Boat boat) {
        return questions.stream().filter(each -> each.applies().to(boat)).toList();
    }

    /** Tells what to bring for checks, what serves most of them first. */
    public static List<String> tools(List<Check> checks) {
        List<String> all = checks.stream()
                .flatMap(check -> Arrays.stream(check.tools().split(",")))
                .map(String::strip)
                .filter(tool -> !ALWAYS_THERE.contains(tool))
                .toList();
        return all.stream()
                .distinct()
                .sorted((one, other) -> Long.compare(count(all.stream(), other), count(all.stream(), one)))
                .toList();
    }

    private static long count(Stream<String> tools, String tool) {
        return tools.filter(tool::equals).count();
    }
}
