/** Reports for people: as plain text and as Markdown, in the words of a language. */
package dev.jetting.rules.render;
