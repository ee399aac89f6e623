# Lo que se dice de un plan mientras se escribe: `advice-<código>` del motor, y `fix-<código>` para lo que lo arregla.
# $who es una lista de nombres.

advice-title = Revisado para
advice-given = { $count ->
    [one] la única clienta que lo tiene
   *[other] las { $count } clientas que lo tienen
}
advice-all = { $count ->
    [one] tu única clienta
   *[other] todas tus clientas ({ $count })
}
advice-one = { $name }
advice-nobody = Nadie todavía. Añade clientas en «Clientas»; aquí se dice lo que vale para todas.
advice-looking = Revisando…
advice-none = Nada que señalar.
advice-count = { $count ->
    [one] Una observación
   *[other] { $count } observaciones
}
advice-count-left = { $count ->
    [one] Una observación; un ejercicio deja a alguien sin nada
   *[other] { $count } observaciones; { $left ->
        [one] un ejercicio deja
       *[other] { $left } ejercicios dejan
    } a alguien sin nada
}
advice-clients = Antes de entrenar
advice-week = La semana
advice-session = La sesión
advice-mark = { $count ->
    [one] Una observación: { $what }
   *[other] { $count } observaciones: { $what }
}
advice-names = Nombres
advice-who-from = { $name } (desde el { $day })
advice-who-until = { $name } (hasta el { $day })
advice-who-more = { $names } y { $count } más
advice-besides = Además queda excluido: { $closed }
advice-source = { $source }

advice-closed = No se propone nada hasta que haya una respuesta o un visto bueno; el panel dice cuál: { $who }.
advice-waits = Solo respiración, suelo pélvico y movilidad hasta que haya un visto bueno: { $who }.
advice-held = Descansa hasta que respondas en el panel a «{ $symptom }»: { $who }.
advice-no-kit = Ningún peldaño permitido se puede hacer con el material de { $who }.
advice-lowest-kit = Solo el peldaño más fácil se puede hacer con el material de { $who }.
advice-ruled-out = No queda ningún peldaño ({ $closed }) para { $who }.
advice-effort = Apunta a { $target } en reserva; al menos { $least } para { $who }.
advice-rounds = { $rounds } rondas; como mucho { $most } para { $who }.
advice-push-pull = La semana tiene { $one } series de empuje y { $other } de tracción.
advice-knee-hip = La semana tiene { $one } series de rodilla (sentadilla, una pierna) y { $other } de cadera (bisagra, puente).
advice-few-sets = { $pattern }: { $sets } series duras por semana, menos de { $limit }.
advice-many-sets = { $pattern }: { $sets } series duras por semana, más de { $limit }.
advice-longer = { $logged ->
    [0] Unos { $minutes } minutos tal como está escrita; se prevén { $meant }.
   *[other] { $minutes } minutos, la mediana de { $logged } registros; se prevén { $meant }.
}
advice-logged = { $median } minutos, la mediana de { $logged } registros; se calculan { $minutes }.

advice-by-position = { $position } en esta etapa
advice-by-unwell = { $position }: { $symptom }
advice-by-impact = impacto en esta etapa
advice-by-checks = impacto antes de sus pruebas
advice-by-load = sostener peso en esta etapa
advice-by-first_days = por ahora, todo menos respiración y suelo pélvico
advice-by-condition = { $condition }
advice-by-restriction = una restricción tuya

fix-kit = Falta: { $pieces }
fix-on-the-day = La propuesta de cada día ya lo respeta por sí sola.
fix-levels = Permitir desde el peldaño { $level }: { $variant }
fix-ladder = Poner { $ladder } en su lugar: { $variant }
fix-reserve = Apuntar a { $target } en reserva
fix-rounds = { $rounds ->
    [one] Una ronda: { $what }
   *[other] { $rounds } rondas: { $what }
}
fix-block = Añadir { $ladder }
fix-minutes = Prever { $minutes } minutos
fix-helps = { $fix } (ayuda a { $helps } de { $count })

write-meant = Minutos previstos
write-logged = { $count ->
    [one] registrada una vez: { $median } min
   *[other] registrada { $count } veces: mediana de { $median } min
}
advice-in-week = Semana { $week }: { $said }
