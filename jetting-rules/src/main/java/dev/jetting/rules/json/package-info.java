/** Setup sheets and reports as JSON, strict in what is read. */
package dev.jetting.rules.json;
