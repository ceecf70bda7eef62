package dev.penstock;

import dev.penstock.provenance.ModelCard;
import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.LinkedHashMap;
import java.util.Map;

/** Every model card that a class of the program declares. */
final class DeclaredCards {

    private DeclaredCards() {}

    /** Cards with the class that declares each; a card that two classes name belongs to the first by name. */
    static Map<ModelCard, Class<?>> all() throws IOException, ReflectiveOperationException {
        Map<ModelCard, Class<?>> cards = new LinkedHashMap<>();
        for (Class<?> owner : ProgramClasses.all()) {
            for (Field field : owner.getDeclaredFields()) {
                if (field.getType() == ModelCard.class && Modifier.isStatic(field.getModifiers())) {
                    field.setAccessible(true);
                    cards.putIfAbsent((ModelCard) field.get(null), owner);
                }
            }
        }
        return cards;
    }
}
