using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;

namespace Practice.Service.Clients;

/// <summary>What the client form says, already read as Domain values.</summary>
public sealed record ClientDetails
{
    public required string GivenName { get; init; }
    public required string FamilyName { get; init; }
    public string? Email { get; init; }
    public required LocalDate BirthDate { get; init; }

    /// <summary>IANA key of the time zone the client lives in; null where nobody said, then the practice's counts.</summary>
    public string? ZoneId { get; init; }
    public required Physique Physique { get; init; }
    public Diet Diet { get; init; } = Diet.Unrestricted;
    public Tastes Tastes { get; init; } = Tastes.Unknown;
    public HouseholdUnits Units { get; init; }
    public string Notes { get; init; } = "";

    /// <summary>The details of a client as they stand.</summary>
    public static ClientDetails Of(Client client) =>
        new()
        {
            GivenName = client.GivenName,
            FamilyName = client.FamilyName,
            Email = client.Email,
            BirthDate = client.BirthDate,
            ZoneId = client.ZoneId,
            Physique = client.Physique,
            Diet = client.Diet,
            Tastes = client.Tastes,
            Units = client.Units,
            Notes = client.Notes,
        };

    /// <param name="client">Whom they are of.</param>
    /// <param name="today">The present day.</param>
    /// <exception cref="ArgumentException">Something cannot be kept; the message says what.</exception>
    internal void ApplyTo(Client client, LocalDate today)
    {
        if (BirthDate > today)
            throw new ArgumentException("The day of birth: it lies ahead.");
        if (BirthDate < today.PlusYears(-120))
            throw new ArgumentException("The day of birth: more than 120 years ago.");
        client.Identify(GivenName, FamilyName, BirthDate, Email);
        client.LiveIn(ZoneId);
        client.Measure(Physique);
        client.Restrict(Diet);
        client.Prefer(Tastes);
        client.Speak(Units);
        client.Annotate(Notes);
    }
}
