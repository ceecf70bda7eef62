package dev.penstock;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import dev.penstock.provenance.ModelCard;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.LinkedHashMap;
import java.util.Map;

/** Every model card that a class of the program declares. */
final class DeclaredCards {

    private DeclaredCards() {}

    /** Cards with the class that declares each; a card that two classes name belongs to the first by name. */
    static Map<ModelCard, Class<?>> all() throws IllegalAccessException, ClassNotFoundException {
        Map<ModelCard, Class<?>> cards = new LinkedHashMap<>();
        for (JavaClass c : new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("dev.penstock").stream()
                        .sorted((a, b) -> a.getName().compareTo(b.getName()))
                        .toList()) {
            if (c.getFields().stream().noneMatch(f -> f.getRawType().getName().equals(ModelCard.class.getName()))) {
                continue;
            }
            Class<?> owner = Class.forName(c.getName());
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
