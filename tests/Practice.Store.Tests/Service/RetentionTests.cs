using NodaTime;
using NodaTime.Testing;
using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Service.Clients;
using Practice.Service.Practices;
using Practice.Service.Practices.Brand;
using Practice.Service.Privacy;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

public class RetentionTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Who_was_quiet_for_as_long_as_the_practice_keeps_is_erased_and_nobody_else()
    {
        var desk = practice.Practitioner with { Role = StaffRole.Owner };
        var open = practice.Get<OpenClient>();
        var quiet = await Registered(new LocalDate(2027, 3, 1));
        var held = await Registered(new LocalDate(2027, 3, 1));
        var seen = await Registered(new LocalDate(2031, 6, 1));
        var onFile = (await open.Run(desk, held, Cancel))!.Client;
        await practice.Get<EraseClient>().Keep(desk, onFile, "A claim", Cancel);
        ((FakeClock)practice.Get<IClock>()).Reset(Instant.FromUtc(2032, 4, 1, 10, 0));

        var retention = practice.Get<Retention>();
        Assert.Equal(0, await retention.Run(Cancel));
        var face = (await practice.Get<SetBrand>().Open(desk, Cancel))!;
        await practice
            .Get<SetDefaults>()
            .Run(desk, face, new PracticeDefaults { KeptYears = 3 }, Cancel);
        Assert.Equal(1, await retention.Run(Cancel));
        Assert.Null(await open.Run(desk, quiet, Cancel));
        Assert.NotNull(await open.Run(desk, held, Cancel));
        Assert.NotNull(await open.Run(desk, seen, Cancel));
    }

    private Task<Guid> Registered(LocalDate weighed) =>
        practice
            .Get<RegisterClient>()
            .Run(
                practice.Practitioner,
                new ClientDetails
                {
                    GivenName = "Quinn",
                    FamilyName = "Quiet",
                    BirthDate = new LocalDate(1990, 5, 4),
                    Physique = new Physique { Sex = Sex.Male, HeightCm = 180 },
                },
                new BodyMassEntry(weighed, BodyMass.OfKilograms(70)),
                Cancel
            );
}
