package org.keelweigh.exchange;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.shortlist.Documents;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/**
 * Reads a file that {@link ShortlistExport} wrote, or that somebody wrote by hand, and says line by line what is wrong
 * with it. Reading stores nothing.
 */
public final class ShortlistImport {

    private final DocumentSchema schema;
    private final BoatDefaults defaults;
    private final KnownNames names;
    private final int thisYear;

    /**
     * Prepares reading.
     *
     * @param catalogue the catalogues whose names documents may use
     * @param thisYear the calendar year, which no model year can be far beyond
     */
    public ShortlistImport(Catalogue catalogue, int thisYear) {
        this.schema = DocumentSchema.shipped();
        this.defaults = BoatDefaults.read(catalogue);
        this.names = KnownNames.read(catalogue);
        this.thisYear = thisYear;
    }

    /** Reads a text. */
    public ImportResult read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Reads a file's bytes, UTF-8 with or without a byte order mark. */
    public ImportResult read(byte[] bytes) {
        try {
            LocatedJson located = LocatedJson.read(Utf8Text.of(bytes));
            requireFormat(located);
            return look(located);
        } catch (RefusedFile e) {
            return new ImportResult.Refused(List.of(e.problem()));
        }
    }

    private ImportResult look(LocatedJson located) {
        DocumentSchema.Findings found = schema.look(located);
        if (!found.shape().isEmpty()) {
            List<ImportProblem> all = new ArrayList<>(found.shape());
            all.addAll(found.range());
            return refused(all);
        }
        ShortlistDocument document;
        try {
            document = Documents.read(located.root(), ShortlistDocument.class);
        } catch (JacksonException e) {
            return refused(found.range().isEmpty() ? List.of(unreadable(located, e)) : found.range());
        }
        DocumentReview review = new DocumentReview(document, located, names, defaults, thisYear);
        List<ImportProblem> problems = new ArrayList<>(review.problems());
        found.range().stream()
                .filter(each ->
                        problems.stream().noneMatch(other -> other.field().equals(each.field())))
                .forEach(problems::add);
        return problems.isEmpty() ? new ImportResult.Ready(document, review.questions()) : refused(problems);
    }

    private static ImportResult refused(List<ImportProblem> problems) {
        return new ImportResult.Refused(problems.stream()
                .sorted(Comparator.comparingInt(ImportProblem::line))
                .toList());
    }

    /** What the schema cannot say, such as an estimate whose points are out of order, a record says itself. */
    private static ImportProblem unreadable(LocatedJson located, JacksonException e) {
        StringBuilder path = new StringBuilder();
        for (JacksonException.Reference step : e.getPath()) {
            path.append(
                    step.getPropertyName() == null
                            ? "[" + step.getIndex() + "]"
                            : (path.isEmpty() ? "" : ".") + step.getPropertyName());
        }
        Throwable cause = e.getCause() == null ? e : e.getCause();
        String field = path.toString();
        return new ImportProblem(field, located.line(field), cause.getMessage() + ".");
    }

    private static void requireFormat(LocatedJson located) throws RefusedFile {
        JsonNode root = located.root();
        if (!root.isObject()) {
            throw new RefusedFile("", 1, "A shortlist file begins with { but here is " + Words.of(root) + ".");
        }
        String format = root.path("format").asString("");
        if (!format.equals(ShortlistDocument.FORMAT)) {
            throw new RefusedFile(
                    "format",
                    located.line("format"),
                    "This is not a shortlist file: its format should be \"" + ShortlistDocument.FORMAT + "\""
                            + (format.isEmpty() ? "." : ", not \"" + Words.brief(format) + "\"."));
        }
        JsonNode version = root.path("formatVersion");
        if (version.isNumber() && version.asDouble() > ShortlistDocument.VERSION) {
            throw new RefusedFile(
                    "formatVersion",
                    located.line("formatVersion"),
                    "This file was made by a newer Keelweigh (form " + Words.number(version.decimalValue())
                            + "; this one reads up to " + ShortlistDocument.VERSION
                            + "). Update Keelweigh, then import it again.");
        }
    }
}
