package leadlight.drill;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import leadlight.data.DataFile;
import leadlight.data.Hash;
import leadlight.data.JsonText;
import leadlight.drill.Deck.Card;
import leadlight.model.UserError;
import leadlight.record.Sitting;

/**
 * A deck that can be taken, wholly in memory: nothing is read from the disk while it is served.
 *
 * @param deck what is asked and told
 * @param id how the record knows it
 * @param pictures by file name
 */
public record OpenDeck(Deck deck, Sitting.DeckId id, Map<String, byte[]> pictures) {

  /**
   * Reads a deck's folder.
   *
   * @throws UserError if it is none, or a picture is not as it was made
   */
  public static OpenDeck read(Path folder) {
    Path file = folder.resolve(MadeDeck.FILE);
    if (!Files.isRegularFile(file)) {
      throw new UserError(folder + " is no deck; make one with \"leadlight drill new\"");
    }
    DataFile data = DataFile.at(file);
    Deck deck = data.read(Deck.class);
    Map<String, byte[]> pictures = new HashMap<>();
    deck.cards().forEach(card -> pictures.put(card.picture(), picture(folder, card)));
    return new OpenDeck(deck, id(deck, data.sha256(), false), pictures);
  }

  /** A row of the trainee's own, just made. */
  static OpenDeck ofOwnWork(MadeDeck made) {
    byte[] text = JsonText.of(made.deck()).getBytes(StandardCharsets.UTF_8);
    return new OpenDeck(made.deck(), id(made.deck(), Hash.sha256(text), true), made.pictures());
  }

  private static Sitting.DeckId id(Deck deck, String key, boolean own) {
    return new Sitting.DeckId(key, deck.name(), deck.cards().size(), own);
  }

  private static byte[] picture(Path folder, Card card) {
    Path file = folder.resolve(card.picture());
    try {
      byte[] content = Files.readAllBytes(file);
      if (!Hash.sha256(content).equals(card.sha256())) {
        throw new UserError(file + " was changed since the deck was made; make the deck again");
      }
      return content;
    } catch (IOException e) {
      throw new UserError(file + " cannot be read; make the deck again");
    }
  }

  /** A card by its number, from 1. */
  Card card(int number) {
    return deck.cards().get(number - 1);
  }

  byte[] picture(int number) {
    return pictures.get(card(number).picture());
  }
}
