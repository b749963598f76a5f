package org.keelweigh.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Year;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.keelweigh.appraisal.Appraiser;
import org.keelweigh.appraisal.Catalogues;
import org.keelweigh.catalogue.Catalogue;

/** Prints the whole answer for an exported shortlist, without server, database or browser. */
public final class AppraiseCommand {

    private static final int DONE = 0;
    private static final int FAILED = 1;
    private static final int BAD_INPUT = 2;

    private final PrintStream out;
    private final PrintStream err;

    private AppraiseCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /** Runs the command and ends the program: 0 when an answer was printed, 2 on bad input, 1 when the program failed. */
    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = run(arguments, System.getenv(), out, err);
        out.flush();
        System.exit(code);
    }

    static int run(String[] arguments, Map<String, String> environment, PrintStream out, PrintStream err) {
        return new AppraiseCommand(out, err).run(List.of(arguments), environment);
    }

    private int run(List<String> arguments, Map<String, String> environment) {
        try {
            AppraiseRequest request = AppraiseRequest.of(arguments, environment);
            out.print(request.help() ? AppraiseRequest.HELP : answer(request));
            return DONE;
        } catch (BadInput e) {
            err.println(e.sentence());
            return BAD_INPUT;
        } catch (RuntimeException e) {
            err.println("Keelweigh itself failed on this shortlist, which is a mistake in the program: " + e);
            return FAILED;
        }
    }

    private static String answer(AppraiseRequest request) throws BadInput {
        byte[] bytes = bytes(request.file());
        Catalogue source = source(request.catalogueFolder());
        int thisYear = Year.now().getValue();
        Catalogues catalogues;
        ShortlistImport reading;
        try {
            catalogues = Catalogues.read(source);
            reading = new ShortlistImport(source, thisYear);
        } catch (IllegalArgumentException e) {
            throw unusable(request, String.valueOf(e.getMessage()));
        } catch (UncheckedIOException e) {
            throw unusable(request, e.getMessage() + "; it must be UTF-8 text that you may read.");
        }
        return switch (reading.read(bytes)) {
            case ImportResult.Refused refused ->
                throw new BadInput(request.file() + ": " + firstOf(refused.problems()));
            case ImportResult.Ready ready -> {
                Appraiser appraiser = new Appraiser(catalogues);
                WholeAnswer whole =
                        WholeAnswer.of(appraiser.measure(ready.document().facts(), thisYear), catalogues);
                yield request.json() ? AnswerJson.of(whole) : AnswerText.of(whole);
            }
        };
    }

    private static BadInput unusable(AppraiseRequest request, String complaint) {
        return new BadInput("The catalogue in " + request.catalogueFolder().orElse("the program") + " cannot be used: "
                + complaint);
    }

    private static Catalogue source(Optional<String> folder) throws BadInput {
        if (folder.isEmpty()) {
            return Catalogue.shipped();
        }
        try {
            return Catalogue.withShopFolder(Path.of(folder.get()));
        } catch (IllegalArgumentException e) {
            throw new BadInput(String.valueOf(e.getMessage()));
        }
    }

    /** Reads a file or what a pipe brings, but no more than can be a shortlist. */
    private static byte[] bytes(String file) throws BadInput {
        try {
            Path path = Path.of(file);
            if (Files.isDirectory(path)) {
                throw new BadInput(file + " is a folder; name a file in it.");
            }
            if (!Files.exists(path)) {
                throw new BadInput("There is no file " + file + ".");
            }
            try (InputStream in = Files.newInputStream(path)) {
                byte[] bytes = in.readNBytes(Utf8Text.MOST_BYTES + 1);
                if (bytes.length > Utf8Text.MOST_BYTES) {
                    throw new BadInput(file + " has more than 5 MB, more than any shortlist needs.");
                }
                return bytes;
            }
        } catch (AccessDeniedException e) {
            throw new BadInput("The file " + file + " may not be read; ask for the permission to read it.");
        } catch (IOException e) {
            throw new BadInput("The file " + file + " cannot be read: " + e.getMessage() + ".");
        } catch (InvalidPathException e) {
            throw new BadInput("No file can have the name " + file + ".");
        }
    }

    private static String firstOf(List<ImportProblem> problems) {
        String first = problems.getFirst().message();
        int more = problems.size() - 1;
        return more == 0 ? first : first + " (and " + more + " more " + (more == 1 ? "problem" : "problems") + ")";
    }
}
