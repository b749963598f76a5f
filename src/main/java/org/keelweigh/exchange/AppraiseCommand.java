package org.keelweigh.exchange;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Year;
import java.util.List;
import org.keelweigh.appraisal.Appraiser;
import org.keelweigh.appraisal.Catalogues;
import org.keelweigh.catalogue.Catalogue;

/** Prints the whole answer for an exported shortlist, without server, database or browser. */
public final class AppraiseCommand {

    private static final int DONE = 0;
    private static final int BAD_INPUT = 2;
    private static final String USAGE = "Usage: bin/appraise [--format text|json] FILE";

    private final PrintStream out;
    private final PrintStream err;

    private AppraiseCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /** Runs the command and ends the program: 0 when an answer was printed, 2 on bad input. */
    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = run(arguments, out, err);
        out.flush();
        System.exit(code);
    }

    static int run(String[] arguments, PrintStream out, PrintStream err) {
        return new AppraiseCommand(out, err).run(List.of(arguments));
    }

    private int run(List<String> arguments) {
        return switch (arguments.size()) {
            case 1 -> arguments.getFirst().startsWith("-") ? refuse(USAGE) : appraise(arguments.getFirst(), "text");
            case 3 ->
                arguments.getFirst().equals("--format") ? appraise(arguments.get(2), arguments.get(1)) : refuse(USAGE);
            default -> refuse(USAGE);
        };
    }

    private int appraise(String file, String format) {
        if (!format.equals("text") && !format.equals("json")) {
            return refuse("The format must be text or json, not \"" + format + "\".");
        }
        byte[] bytes;
        try {
            Path path = Path.of(file);
            if (!Files.isRegularFile(path)) {
                return refuse("There is no file " + file + ".");
            }
            if (Files.size(path) > Utf8Text.MOST_BYTES) {
                return refuse(file + " has more than 5 MB, more than any shortlist needs.");
            }
            bytes = Files.readAllBytes(path);
        } catch (IOException | InvalidPathException e) {
            return refuse("The file " + file + " cannot be read.");
        }
        Catalogue catalogue = Catalogue.shipped();
        int thisYear = Year.now().getValue();
        return switch (new ShortlistImport(catalogue, thisYear).read(bytes)) {
            case ImportResult.Refused refused -> refuse(file + ": " + firstOf(refused.problems()));
            case ImportResult.Ready ready -> {
                print(ready.document(), new Appraiser(Catalogues.read(catalogue)), thisYear, format);
                yield DONE;
            }
        };
    }

    private void print(ShortlistDocument document, Appraiser appraiser, int thisYear, String format) {
        WholeAnswer whole = WholeAnswer.of(appraiser.measure(document.facts(), thisYear), appraiser.catalogues());
        out.print(format.equals("json") ? AnswerJson.of(whole) : AnswerText.of(whole));
        out.flush();
    }

    private static String firstOf(List<ImportProblem> problems) {
        String first = problems.getFirst().message();
        int more = problems.size() - 1;
        return more == 0 ? first : first + " (and " + more + " more " + (more == 1 ? "problem" : "problems") + ")";
    }

    private int refuse(String sentence) {
        err.println(sentence);
        return BAD_INPUT;
    }
}
