package dev.jetting.rules.json;

/**
 * The texts of a rule in another language, in JSON.
 *
 * @param title one line for people
 * @param rationale why it matters
 * @param message what is wrong, with the same placeholders as in the rule's own language
 * @param remedy what to do, with the same placeholders
 */
record RuleTextsForm(String title, String rationale, String message, String remedy) {}
