namespace Practice.Domain.Screening.Questions;

/// <summary>Foods that a body cannot deal with. Which allergens these are stands in the client's diet.</summary>
public static class FoodAndTheBody
{
    /// <summary>Any food allergy.</summary>
    public static Question FoodAllergy { get; } =
        Question.YesNo("food-allergy", "Are you allergic to any food?") with
        {
            Help =
                "If so, each one is recorded with your diet. Wheat allergy belongs here, coeliac disease below.",
        };

    /// <summary>Never a severe reaction.</summary>
    public static Choice NoSevereReaction { get; } = new("no", "No");

    /// <summary>A severe reaction, exercise not involved.</summary>
    public static Choice SevereReaction { get; } = new("yes", "Yes, not linked with exercise");

    /// <summary>A severe reaction on exercise after a food.</summary>
    public static Choice SevereReactionOnExercise { get; } =
        new("with-exercise", "Yes, when I exercised after eating, or I am not sure");

    /// <summary>Anaphylaxis, with or without exercise.</summary>
    public static Question Anaphylaxis { get; } =
        Question.OneOf(
            "anaphylaxis",
            "Have you ever had a severe allergic reaction (anaphylaxis)?",
            [NoSevereReaction, SevereReaction, SevereReactionOnExercise]
        ) with
        {
            Help =
                "Trouble breathing, swelling of the face or throat, or fainting within minutes to hours.",
        };

    /// <summary>Coeliac disease.</summary>
    public static Question Coeliac { get; } =
        Question.YesNo("coeliac", "Do you have coeliac disease?");

    /// <summary>Whether oats certified gluten-free are eaten without harm.</summary>
    public static Question CertifiedOats { get; } =
        Question.YesNo(
            "certified-oats",
            "Do you eat oats that are certified gluten-free, and has your care team agreed?"
        ) with
        {
            After = new FollowUp(Coeliac, [Choice.Yes]),
        };

    /// <summary>Lactose is tolerated.</summary>
    public static Choice NoLactoseTrouble { get; } = new("no", "No");

    /// <summary>Some lactose is tolerated.</summary>
    public static Choice SomeLactose { get; } =
        new("some", "Yes, a glass of milk is about my limit");

    /// <summary>None is tolerated.</summary>
    public static Choice NoLactose { get; } = new("severe", "Yes, even a little troubles me");

    /// <summary>Lactose intolerance.</summary>
    public static Question Lactose { get; } =
        Question.OneOf(
            "lactose",
            "Are you lactose intolerant?",
            [NoLactoseTrouble, SomeLactose, NoLactose]
        ) with
        {
            Help =
                "That is trouble with the sugar of milk. A milk allergy is recorded with your diet.",
        };

    /// <summary>Fructose is tolerated.</summary>
    public static Choice NoFructoseTrouble { get; } = new("no", "No");

    /// <summary>Fructose malabsorption.</summary>
    public static Choice FructoseMalabsorption { get; } =
        new("malabsorption", "Fructose malabsorption: fruit sugar upsets my gut");

    /// <summary>Hereditary fructose intolerance.</summary>
    public static Choice HereditaryFructoseIntolerance { get; } =
        new("hereditary", "Hereditary fructose intolerance, found by a metabolic clinic");

    /// <summary>Fructose.</summary>
    public static Question Fructose { get; } =
        Question.OneOf(
            "fructose",
            "Do you have trouble with fructose (fruit sugar)?",
            [NoFructoseTrouble, FructoseMalabsorption, HereditaryFructoseIntolerance]
        );

    /// <summary>Sucrase-isomaltase deficiency.</summary>
    public static Question SucraseDeficiency { get; } =
        Question.YesNo(
            "sucrase-isomaltase-deficiency",
            "Do you have sucrase-isomaltase deficiency (you cannot digest table sugar)?"
        );

    /// <summary>Phenylketonuria.</summary>
    public static Question Phenylketonuria { get; } =
        Question.YesNo("phenylketonuria", "Do you have phenylketonuria (PKU)?");

    /// <summary>The section.</summary>
    public static QuestionSection Section { get; } =
        new(
            "food-and-the-body",
            "Allergies and intolerances",
            [
                FoodAllergy,
                Anaphylaxis,
                Coeliac,
                CertifiedOats,
                Lactose,
                Fructose,
                SucraseDeficiency,
                Phenylketonuria,
            ]
        );
}
