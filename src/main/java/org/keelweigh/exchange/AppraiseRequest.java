package org.keelweigh.exchange;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the command line asks for.
 *
 * @param help whether only help is wanted
 * @param json whether the answer is for programs
 * @param file the shortlist file as named; empty when only help is wanted
 * @param catalogueFolder the folder with a shop's own catalogue tables
 */
record AppraiseRequest(boolean help, boolean json, String file, Optional<String> catalogueFolder) {

    static final String HELP = """
            Prints the whole answer for an exported shortlist.

            Usage: bin/appraise [--format text|json] [--catalogue FOLDER] FILE

              FILE                a shortlist as exported by Keelweigh (docs/data-format.md)
              --format text       an answer to read, at most 100 columns wide; the usual form
              --format json       the same for programs, every field told in docs/data-format.md
              --catalogue FOLDER  a folder whose tables replace the shipped ones of the same name;
                                  otherwise the folder that KEELWEIGH_CATALOGUE_FOLDER names, if any
              --help              this text

            Exit code: 0 when an answer (or this text) was printed, 2 when what was given cannot be used,
            with one sentence on standard error, 1 when the program itself failed.
            """;

    private static final String CATALOGUE_VARIABLE = "KEELWEIGH_CATALOGUE_FOLDER";
    private static final String ASK_FOR_HELP = " See bin/appraise --help.";

    static AppraiseRequest of(List<String> arguments, Map<String, String> environment) throws BadInput {
        if (arguments.contains("--help") || arguments.contains("-h")) {
            return new AppraiseRequest(true, false, "", Optional.empty());
        }
        return new Reading(arguments.iterator()).request(environment);
    }

    /** Goes through the arguments once. */
    private static final class Reading {

        private final Iterator<String> rest;
        private final List<String> files = new ArrayList<>();
        private boolean json;
        private @Nullable String folder;

        Reading(Iterator<String> rest) {
            this.rest = rest;
        }

        AppraiseRequest request(Map<String, String> environment) throws BadInput {
            boolean optionsEnded = false;
            while (rest.hasNext()) {
                String argument = rest.next();
                if (optionsEnded || !argument.startsWith("-")) {
                    files.add(argument);
                } else if (argument.equals("--")) {
                    optionsEnded = true;
                } else {
                    option(argument);
                }
            }
            Optional<String> named = Optional.ofNullable(folder)
                    .or(() -> Optional.ofNullable(environment.get(CATALOGUE_VARIABLE))
                            .filter(each -> !each.isBlank()));
            return new AppraiseRequest(false, json, file(), named);
        }

        private void option(String argument) throws BadInput {
            int sign = argument.indexOf('=');
            String name = sign < 0 ? argument : argument.substring(0, sign);
            switch (name) {
                case "--format" -> json = format(value(name, argument, sign));
                case "--catalogue" -> folder = value(name, argument, sign);
                default ->
                    throw new BadInput(
                            "There is no option " + name + ", only --format, --catalogue and --help." + ASK_FOR_HELP);
            }
        }

        private String value(String name, String argument, int sign) throws BadInput {
            String value = sign >= 0 ? argument.substring(sign + 1) : rest.hasNext() ? rest.next() : "";
            if (value.isBlank()) {
                throw new BadInput("After " + name + " belongs "
                        + (name.equals("--format") ? "text or json" : "the name of a folder") + "." + ASK_FOR_HELP);
            }
            return value;
        }

        private static boolean format(String value) throws BadInput {
            return switch (value) {
                case "json" -> true;
                case "text" -> false;
                default -> throw new BadInput("The format must be text or json, not \"" + value + "\".");
            };
        }

        private String file() throws BadInput {
            if (files.isEmpty()) {
                throw new BadInput("No shortlist file was named." + ASK_FOR_HELP);
            }
            if (files.size() > 1) {
                throw new BadInput("One file at a time: " + files.size() + " were named, " + files.get(0) + " and "
                        + files.get(1) + (files.size() > 2 ? " among them." : "."));
            }
            return files.getFirst();
        }
    }
}
