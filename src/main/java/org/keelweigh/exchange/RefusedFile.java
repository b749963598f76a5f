package org.keelweigh.exchange;

/** Stops the reading of a file of which nothing further can be said. */
final class RefusedFile extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient ImportProblem problem;

    RefusedFile(ImportProblem problem) {
        super(problem.message());
        this.problem = problem;
    }

    RefusedFile(String field, int line, String sentence) {
        this(new ImportProblem(field, line, sentence));
    }

    ImportProblem problem() {
        return problem;
    }
}
