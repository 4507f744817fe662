/** Two rule packs: one written in Java, one in a rule file. */
package dev.example.ruleauthor;
