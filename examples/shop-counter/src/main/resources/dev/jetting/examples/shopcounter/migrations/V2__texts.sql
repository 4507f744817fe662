-- What was done, in each language: a JSON object of texts by language tag, '' for one that is the
-- same in all.
ALTER TABLE entry RENAME COLUMN text TO texts;
UPDATE entry SET texts = json_object('', texts);
