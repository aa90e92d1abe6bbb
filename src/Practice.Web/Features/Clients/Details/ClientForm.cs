using System.ComponentModel.DataAnnotations;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Web.Parts;

namespace Practice.Web.Features.Clients.Details;

/// <summary>What was typed about a client; it asks only whether it can be read.</summary>
public class ClientForm : IValidatableObject
{
    private const string Missing = "This is needed.";

    [Required(ErrorMessage = Missing), Typed(100)]
    public string? GivenName { get; set; }

    [Required(ErrorMessage = Missing), Typed(100)]
    public string? FamilyName { get; set; }

    [EmailAddress(ErrorMessage = "That is not an e-mail address.")]
    [Typed(254)]
    public string? Email { get; set; }

    [Required(ErrorMessage = Missing)]
    public DateOnly? BirthDate { get; set; }

    [Required(ErrorMessage = Missing), Zone]
    public string? ZoneId { get; set; }

    [Required(ErrorMessage = "The formulas differ: choose one.")]
    public Sex? Sex { get; set; }

    [Required(ErrorMessage = Missing)]
    [Range(100, 230, ErrorMessage = "Between 100 and 230 cm.")]
    public decimal? HeightCm { get; set; }

    [Range(3, 60, ErrorMessage = "Between 3 and 60 %.")]
    public decimal? BodyFatPercent { get; set; }

    [Range(20, 90, ErrorMessage = "Between 20 and 90 mL/kg/min.")]
    public decimal? Vo2Max { get; set; }

    [Range(0, 300, ErrorMessage = "Between 0 and 300 km.")]
    public decimal? WeeklyKm { get; set; }

    [Range(1, 250, ErrorMessage = "Between 1 and 250 km.")]
    public decimal? ResultKm { get; set; }

    [RaceTime]
    public string? ResultTime { get; set; }

    public DateOnly? ResultOn { get; set; }

    public DietPattern Pattern { get; set; }
    public HashSet<Allergen> Allergies { get; } = [];

    [Typed(500, OfLines = true)]
    public string? OtherAllergy { get; set; }

    public HashSet<FoodTraits> Refused { get; } = [];
    public HashSet<KitchenLimit> Kitchen { get; } = [];
    public Tastes Tastes { get; set; } = Tastes.Unknown;
    public HouseholdUnits Units { get; set; }

    [Typed(10_000, OfLines = true)]
    public string? Notes { get; set; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (
            BirthDate is { } born
            && validationContext.GetService(typeof(PracticeCalendar)) is PracticeCalendar calendar
        )
        {
            var today = calendar.Today;
            if (LocalDate.FromDateOnly(born) > today)
                yield return new ValidationResult("That day lies ahead.", [nameof(BirthDate)]);
            else if (LocalDate.FromDateOnly(born) < today.PlusYears(-120))
                yield return new ValidationResult(
                    "That is more than 120 years ago.",
                    [nameof(BirthDate)]
                );
        }
        if (ResultKm is null != string.IsNullOrWhiteSpace(ResultTime))
            yield return new ValidationResult(
                "A recent race needs both distance and time.",
                [nameof(ResultTime)]
            );
    }

    /// <summary>A form filled with what is on file.</summary>
    public static ClientForm Of(ClientDetails details)
    {
        var (body, diet) = (details.Physique, details.Diet);
        var form = new ClientForm
        {
            GivenName = details.GivenName,
            FamilyName = details.FamilyName,
            Email = details.Email,
            BirthDate = details.BirthDate.ToDateOnly(),
            ZoneId = details.ZoneId,
            Sex = body.Sex,
            HeightCm = body.HeightCm,
            BodyFatPercent = body.BodyFatPercent,
            Vo2Max = body.Vo2Max,
            WeeklyKm = body.WeeklyKm,
            ResultKm = body.RecentResult?.DistanceKm,
            ResultTime = body.RecentResult is { } result
                ? RaceTimeAttribute.Write(result.Time)
                : null,
            ResultOn = body.RecentResult?.On?.ToDateOnly(),
            Pattern = diet.Pattern,
            OtherAllergy = diet.OtherAllergy,
            Tastes = details.Tastes,
            Units = details.Units,
            Notes = details.Notes,
        };
        form.Allergies.UnionWith(diet.Allergies);
        form.Refused.UnionWith(DietWords.Refusable.Where(t => diet.Refused.HasFlag(t)));
        form.Kitchen.UnionWith(diet.Kitchen);
        return form;
    }

    /// <summary>What the form says. Only of a form that was found valid.</summary>
    public ClientDetails Read() =>
        new()
        {
            GivenName = GivenName!,
            FamilyName = FamilyName!,
            Email = Email,
            BirthDate = LocalDate.FromDateOnly(BirthDate!.Value),
            ZoneId = ZoneId,
            Physique = new Physique
            {
                Sex = Sex!.Value,
                HeightCm = HeightCm!.Value,
                BodyFatPercent = BodyFatPercent,
                Vo2Max = Vo2Max,
                WeeklyKm = WeeklyKm,
                RecentResult = RaceTimeAttribute.Read(ResultTime) is { } time
                    ? new RaceResult(ResultKm!.Value, time, Day(ResultOn))
                    : null,
            },
            Diet = new Diet
            {
                Pattern = Pattern,
                Allergies = [.. Allergies.Order()],
                OtherAllergy = string.IsNullOrWhiteSpace(OtherAllergy) ? null : OtherAllergy.Trim(),
                Refused = Refused.Aggregate(FoodTraits.None, (all, one) => all | one),
                Kitchen = [.. Kitchen.Order()],
            },
            Tastes = Tastes,
            Units = Units,
            Notes = Notes ?? "",
        };

    private static LocalDate? Day(DateOnly? day) => day is { } d ? LocalDate.FromDateOnly(d) : null;
}
