package org.keelweigh.shortlist.store;

import java.util.Optional;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.VisitNotesStore;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps the notes of visits in a relational database. */
@Repository
class JdbcVisitNotesStore implements VisitNotesStore {

    private final JdbcClient database;

    JdbcVisitNotesStore(JdbcClient database) {
        this.database = database;
    }

    @Override
    public Optional<String> find(CandidateId boat) {
        return database.sql("select document from visit where candidate_id = ?")
                .param(boat.value())
                .query(String.class)
                .optional();
    }

    @Override
    public void put(CandidateId boat, String document) {
        int changed = database.sql("update visit set document = ? where candidate_id = ?")
                .params(document, boat.value())
                .update();
        if (changed == 0) {
            database.sql("insert into visit (candidate_id, document) values (?, ?)")
                    .params(boat.value(), document)
                    .update();
        }
    }
}
